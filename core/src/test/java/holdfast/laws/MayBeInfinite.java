// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

/** Typed answers whose documentation says that they may be no finite number, each with its reason. */
final class MayBeInfinite {
  private MayBeInfinite() {}

  static boolean fault(String call, String fault) {
    boolean infinite = fault.endsWith(" Infinity");
    boolean unknown = fault.endsWith(" NaN");
    return switch (call) {
      // An interval that the caller leaves open at an end, as the ring of a wide plate is.
      case "Check.within/6", "Check.overUpTo/6" -> !unknown;
      // A wide plate has no outside: the kernels of thick rings take it as infinite.
      case "HousingShape.wallFactor/1", "HousingShape.equivalentDiameter/1" -> infinite;
      // Without load nothing limits how often the load would be held.
      case "Holding.safety/0", "Holding.safety/2", "ElasticPlasticFit.safety/0" -> infinite;
      // A step without load does no damage.
      case "RatingLife.basic/3", "RatingLife.modified/5", "RatingLife.modified/6" ->
          infinite && fault.contains(".stepLives");
      case "new SpectrumLife/8" -> infinite && fault.contains("stepLives");
      // A limit without a range of loads holds for every load.
      case "MisalignmentLimit.all/0", "MisalignmentLimit.of/1", "MisalignmentLimit.of/2", "MisalignmentLimit.narrowest/2", "new MisalignmentLimit/9" ->
          infinite;
      case "SeatPrice.comparison/0", "new MisalignmentCheck/4" -> infinite && fault.contains("limit.loadTo");
      default -> false;
    };
  }
}
