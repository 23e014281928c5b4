package holdfast.laws;

import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;

import holdfast.bearings.BearingType;
import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Lubrication;
import holdfast.bearings.Oil;
import holdfast.bearings.OuterRing;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.Running;
import holdfast.fits.Fit;
import holdfast.fits.ToleranceClass;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.tables.TableSet;
import holdfast.threads.Friction;
import holdfast.threads.ScrewThread;
import java.util.List;

/** Ordinary objects from which drawn calls make others. */
final class Ordinary {
  private Ordinary() {}

  static List<Object> all() {
    LoadRatings ratings = LoadRatings.radialRoller(kN(14.2), kN(17.5));
    return List.of(
        ratings,
        mm(25), mm(40), mm(80), kN(2), rpm(200), hours(5000), mm2PerS(60),
        RatingLife.basic(ratings, kN(2.1)),
        Reliability.ofPercent(95), Running.NORMAL, OuterRing.DEFLECTING, BearingType.DEEP_GROOVE_BALL,
        Oil.isoVg(68, 95), Contamination.of(Cleanliness.BATH_15_12), Lubrication.of(mm2PerS(40), rpm(180), mm(30)),
        LoadSpectrum.builder().step(kN(3), rpm(100), 0.2).step(kN(2), rpm(200), 0.8).build(),
        Fit.of(mm(25), "H7/g6"), ToleranceClass.of("H7"),
        Material.of("16MnCr5"), FrictionBand.of(0.08, 0.2), ScrewThread.of("M18x1.5"), Friction.of(0.1, 0.16),
        TableSet.bundled());
  }
}
