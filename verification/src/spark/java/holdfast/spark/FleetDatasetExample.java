// SPDX-License-Identifier: Apache-2.0
package holdfast.spark;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.BulkLifeKernel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.ModifiedLife;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.spark.api.java.function.FilterFunction;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import scala.Tuple2;

/**
 * A fleet as a Spark dataset in local mode: the records travel to the workers, the results travel back. Its name is not that
 * of a test, so that what the profile leaves in the target folder is not run by the normal build.
 */
class FleetDatasetExample {
  private static final int SIZE = 10_000;

  private static SparkSession spark;
  private static List<RollerPosition> fleet;

  @BeforeAll
  static void start() {
    spark =
        SparkSession.builder()
            .master("local[2]")
            .config("spark.ui.enabled", false)
            .config("spark.driver.host", "127.0.0.1")
            .config("spark.driver.bindAddress", "127.0.0.1")
            .config("spark.log.level", "ERROR")
            .getOrCreate();
    fleet = new ArrayList<>();
    Random random = new Random(1);
    for (int i = 0; i < SIZE; i++) {
      double c = 1e4 + 9e4 * random.nextDouble();
      fleet.add(
          new RollerPosition(
              i,
              LoadRatings.radialRoller(N(c), N(1.2 * c)).withFatigueLimit(N(0.15 * c)),
              N(c * (0.05 + 0.2 * random.nextDouble())),
              rpm(100 + 900 * random.nextDouble()),
              mm2PerS(20 + 200 * random.nextDouble()),
              mm(20 + 80 * random.nextDouble()),
              0.1 + 0.8 * random.nextDouble()));
    }
  }

  @AfterAll
  static void stop() {
    spark.stop();
  }

  private static Dataset<RollerPosition> dataset() {
    return spark.createDataset(fleet, Encoders.javaSerialization(RollerPosition.class)).repartition(4);
  }

  private static double[] bulk() {
    BearingFamily[] family = new BearingFamily[SIZE];
    double[][] in = new double[8][SIZE];
    for (int i = 0; i < SIZE; i++) {
      RollerPosition p = fleet.get(i);
      family[i] = p.ratings().family();
      in[0][i] = p.ratings().dynamic().newton();
      in[1][i] = p.ratings().fatigueLimit().newton();
      in[2][i] = p.load().newton();
      in[3][i] = p.speed().rpm();
      in[4][i] = p.viscosity().mm2PerS();
      in[5][i] = p.pitchDiameter().mm();
      in[6][i] = p.eC();
      in[7][i] = 90;
    }
    double[] hours = new double[SIZE];
    BulkLifeKernel.hours(0, SIZE, family, in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], hours);
    return hours;
  }

  @Test
  void livesAreThoseOfTheBulkKernel() {
    List<Tuple2<Integer, Double>> lives =
        dataset()
            .map(
                (MapFunction<RollerPosition, Tuple2<Integer, Double>>) p -> new Tuple2<>(p.number(), p.hours()),
                Encoders.tuple(Encoders.INT(), Encoders.DOUBLE()))
            .collectAsList();
    assertEquals(SIZE, lives.stream().map(Tuple2::_1).distinct().count());
    double[] bulk = bulk();
    for (Tuple2<Integer, Double> life : lives) {
      assertEquals(fleet.get(life._1()).hours(), life._2(), "the same code, so the same bits");
      // The record computes eC (Cu/P), the kernel (eC Cu)/P; aISO raises what rounding leaves to the power of -9.185.
      assertEquals(bulk[life._1()], life._2(), 1e-12 * life._2());
    }
  }

  @Test
  void resultsArriveWithTheirDerivation() {
    double limit = bulk()[0];
    List<ModifiedLife> lives =
        dataset()
            .filter((FilterFunction<RollerPosition>) position -> position.hours() <= limit)
            .map((MapFunction<RollerPosition, ModifiedLife>) RollerPosition::life, Encoders.javaSerialization(ModifiedLife.class))
            .collectAsList();
    long expected = fleet.stream().filter(position -> position.hours() <= limit).count();
    assertEquals(expected, lives.size());
    ModifiedLife first = fleet.get(0).life();
    ModifiedLife same = lives.stream().filter(first::equals).findFirst().orElseThrow();
    assertEquals(first.explain(), same.explain());
  }
}
