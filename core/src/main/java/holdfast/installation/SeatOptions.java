// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.seats.FrictionBand;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.seats.OuterPart;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The same roller in the same machine member with several bores: slip, transition, press. It lists what each costs and buys
 * and chooses nothing.
 *
 * @param options the choices, in the order in which they were asked for
 */
public record SeatOptions(List<SeatOption> options) implements Serializable {
  /** A hundredth of a micrometre, in mm: no drawing states less. */
  private static final double SAME = 1e-5;

  // Keeps an unmodifiable copy.
  public SeatOptions {
    Objects.requireNonNull(options, "options");
    options = List.copyOf(options);
    if (options.isEmpty()) {
      throw new InputException("fits", "none", "one or more", "nothing to compare");
    }
  }

  /**
   * Bores worth comparing for a metric stud: slip, transition and press.
   *
   * <p>H7 or K7 is the seat of the trade; the others show what a tighter one costs. With a stud to h7 the press bore P7 still
   * lets the loosest pair slip, so S6 stands beside it; with h6 it does not. P7 with h6 and S6 with h7 interfere at every size
   * of stud from 4 mm to 65 mm. Selection of this project, common practice at most.
   *
   * @param studTolerance tolerance class of the stud, {@code "h6"} or {@code "h7"}
   * @return classes of the bore
   * @throws InputException for another class, for which no list is kept
   */
  public static List<String> usual(String studTolerance) {
    Objects.requireNonNull(studTolerance, "studTolerance");
    return switch (studTolerance) {
      case "h7" -> List.of("H7", "K7", "N7", "P7", "S6");
      case "h6" -> List.of("H7", "K7", "N7", "P7");
      default -> throw new InputException(
          "tolerance class of the stud", studTolerance, "h6 or h7", "state the bores to be compared, or fits of inch sizes");
    };
  }

  /**
   * Bores that the trade uses for the stud of a roller: for a class the usual ones, for an inch stud with drawn deviations
   * both practices of catalogues.
   *
   * @param roller the roller
   * @return tolerances of the bore; empty if no practice is known for its stud
   */
  static List<String> usual(StudRoller roller) {
    Length size = roller.studDiameter();
    String tolerance = roller.studTolerance();
    return alike(size, tolerance, "+0.001/0 in") ? List.of("F7", "+0.0005/0 in") : usualFor(size, tolerance);
  }

  /** The usual bores for a shaft with the limits of h6 or h7, however they are written; none where no list is kept. */
  static List<String> usualFor(Length size, String tolerance) {
    return Stream.of("h7", "h6").filter(kept -> alike(size, tolerance, kept)).findFirst()
        .map(SeatOptions::usual).orElse(List.of());
  }

  /** Tolerances without doubles: of those with the same limits for the size only the first, however they are written. */
  static List<String> distinct(Length size, List<String> tolerances) {
    List<String> distinct = new ArrayList<>();
    tolerances.stream().filter(next -> distinct.stream().noneMatch(kept -> alike(size, kept, next))).forEach(distinct::add);
    return List.copyOf(distinct);
  }

  /** Whether two tolerances set the same limits; one that is not defined for the size is like itself alone. */
  private static boolean alike(Length size, String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    try {
      TolerancedSize first = TolerancedSize.of(size, one);
      TolerancedSize second = TolerancedSize.of(size, other);
      return Math.abs(first.upper().mm() - second.upper().mm()) < SAME
          && Math.abs(first.lower().mm() - second.lower().mm()) < SAME;
    } catch (InputException notDefined) {
      return false;
    }
  }

  /**
   * Classes of inch fits worth comparing for a stud in inches: slip RC2, transition LT3, press FN2 (ANSI B4.1). Each brings
   * its own shaft, so the stud must be made or measured to suit. Selection of this project, common practice at most.
   *
   * @return names of the fits
   */
  public static List<String> usualInch() {
    return List.of("RC2", "LT3", "FN2");
  }

  /**
   * Compares bores for the roller of a plan.
   *
   * @param plan the plan; its own bore class is not used
   * @param bores classes of the bore for the stud of the roller ({@code "K7"}), or whole fits ({@code "H7/k6"}, {@code "FN2"})
   * @param interior inside of the roller
   * @return the options
   * @throws InputException if a class cannot be read or a value is out of range
   */
  public static SeatOptions of(InstallationPlan plan, List<String> bores, RollerInterior interior) {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(bores, "bores");
    StudRoller roller = plan.roller();
    MachineMember member = plan.member();
    InnerPart stud = InnerPart.hollow(roller.material(), roller.greaseBore()).withRoughness(roller.seatRoughness());
    List<Fit> fits = bores.stream().map(bore -> fit(roller, bore)).toList();
    return of(SeatPrice.of(plan, interior), fits, stud, member.body(), member.seatLength(), member.pressingFriction(),
        plan.torqueThroughStud());
  }

  private static Fit fit(StudRoller roller, String bore) {
    // A hole class starts with one capital letter or two and has digits; an inch fit is whole by itself.
    boolean whole = bore.contains("/") || bore.matches("(RC|LC|LT|LN|FN) ?[0-9]+");
    return Fit.of(roller.studDiameter(), whole ? bore : bore + "/" + roller.studTolerance());
  }

  /**
   * Compares fits without a plan.
   *
   * @param price all that the price needs but the fit
   * @param fits the fits
   * @param stud the stud as a pressed part
   * @param member the machine member round the bore
   * @param seatLength length over which stud and bore touch
   * @param friction band of friction in the seat
   * @param throughStud torque that passes through the stud while the nut is tightened, 0 or more
   * @return the options
   * @throws InputException if a value is out of range
   */
  public static SeatOptions of(SeatPriceBuilder price, List<Fit> fits, InnerPart stud, OuterPart member, Length seatLength,
      FrictionBand friction, Torque throughStud) {
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(price, "price");
    Objects.requireNonNull(fits, "fits");
    Objects.requireNonNull(member, "member");
    Objects.requireNonNull(seatLength, "seatLength");
    return new SeatOptions(
        fits.stream()
            .map(fit -> {
              InterferenceFit press =
                  fit.kind() == FitKind.CLEARANCE ? null : InterferenceFit.of(stud, member, fit, seatLength);
              return new SeatOption(fit, price.fit(fit).build(), press, friction, throughStud);
            })
            .toList());
  }

  /**
   * One of the options.
   *
   * @param designation name of its fit, for example {@code "K7/h7"}
   * @return the option; empty if there is none
   */
  public Optional<SeatOption> option(String designation) {
    Objects.requireNonNull(designation, "designation");
    return options.stream().filter(option -> option.fit().designation().equals(designation)).findFirst();
  }

  /** The options, one a line. */
  @Override
  public String toString() {
    return String.join("\n", options.stream().map(SeatOption::toString).toList());
  }
}
