// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SerializationTest {
  static Stream<Serializable> records() {
    LoadRatings ratings = LoadRatings.radialRoller(kN(14.2), kN(17.5));
    Lubrication film = Lubrication.of(Oil.isoVg(68, 95).at(degC(60)).viscosity(), rpm(180), mm(30));
    Contamination clean = Contamination.of(Cleanliness.BATH_15_12);
    LoadSpectrum duty = LoadSpectrum.builder().step(kN(3), rpm(100), 0.2).step(kN(2), rpm(200), 0.8).build();
    GeometryRatings computed =
        BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 9, mm(7.94), mm(39.04), deg(0)).ratings();
    TrackRoller roller = TrackRoller.of(LoadRatings.trackRoller(kN(13), kN(18), OuterRing.DEFLECTING), mm(40), true);
    return Stream.of(
        ratings,
        RatingLife.basic(ratings, kN(2.1)),
        RatingLife.modified(ratings, kN(2.1), Reliability.ofPercent(95), film, clean),
        RatingLife.modified(ratings, kN(2.1), Reliability.L10, film, Contamination.of(ContaminationLevel.NORMAL_CLEANLINESS)),
        RatingLife.modified(ratings, duty, Reliability.L10, mm2PerS(60), mm(30), Contamination.ofFactor(0.5)),
        duty,
        computed,
        LoadedBearing.of(computed).dynamicLoad(kN(1), kN(0.5)),
        LoadedBearing.of(computed).staticLoad(kN(1), kN(0.5), Running.NORMAL),
        Oil.isoVg(68, 95),
        SystemLife.of(10.0 / 9, List.of(hours(1000), hours(2000))),
        roller,
        PermissibleLoad.of(roller, hours(5000), Reliability.L10, rpm(300), 1.5, 40));
  }

  @ParameterizedTest
  @MethodSource("records")
  void recordsSurviveTheWayThroughAStream(Serializable before) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(before);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      Object after = in.readObject();
      assertEquals(before, after);
      assertEquals(before.toString(), after.toString());
    }
  }
}
