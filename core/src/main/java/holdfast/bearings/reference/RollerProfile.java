// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/** Generatrix of a roller: how far its radius falls short of the radius in the middle. */
public sealed interface RollerProfile extends Serializable {
  /**
   * Drop of the profile.
   *
   * @param x position from the middle of the roller
   * @param length effective length Lwe
   * @param diameter diameter Dwe
   * @return P
   * @throws holdfast.quantity.InputException if the position is off the roller
   */
  Length drop(Length x, Length length, Length diameter);

  /**
   * The logarithmic profile as recalled from ISO/TS 16281:2008.
   *
   * @return the profile
   */
  static RollerProfile logarithmic() {
    return new Logarithmic();
  }

  /**
   * A straight roller without relief of its ends.
   *
   * @return the profile
   */
  static RollerProfile flat() {
    return new Flat();
  }

  /**
   * A roller whose generatrix is an arc.
   *
   * @param radius crown radius, at least half of Lwe
   * @return the profile
   * @throws holdfast.quantity.InputException if the radius is not above zero
   */
  static RollerProfile crowned(Length radius) {
    return new Crowned(radius);
  }

  /**
   * A measured or drawn profile.
   *
   * @param drops P at two or more stations evenly spaced from one end of Lwe to the other, each 0 or more
   * @return the profile, interpolated linearly
   * @throws holdfast.quantity.InputException if there are fewer than two stations or a drop is negative
   */
  static RollerProfile given(Length... drops) {
    Objects.requireNonNull(drops, "drops");
    return new Given(List.of(drops));
  }

  /** Logarithmic profile as recalled. */
  record Logarithmic() implements RollerProfile {
    @Override
    public Length drop(Length x, Length length, Length diameter) {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(diameter, "diameter");
      return new Length(ProfileKernel.logarithmic(x.mm(), length.mm(), diameter.mm()));
    }

    /** The profile in words. */
    @Override
    public String toString() {
      return "logarithmic profile [recalled]";
    }
  }

  /** Straight profile. */
  record Flat() implements RollerProfile {
    @Override
    public Length drop(Length x, Length length, Length diameter) {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(diameter, "diameter");
      return new Length(0);
    }

    /** The profile in words. */
    @Override
    public String toString() {
      return "straight rollers";
    }
  }

  /**
   * Arc.
   *
   * @param radius crown radius, over 0
   */
  record Crowned(Length radius) implements RollerProfile {
    // Refuses what is no radius.
    public Crowned {
      Objects.requireNonNull(radius, "radius");
      Check.positive(radius.mm(), "crown radius r", "mm", "a radius is above zero");
    }

    @Override
    public Length drop(Length x, Length length, Length diameter) {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(diameter, "diameter");
      return new Length(ProfileKernel.crowned(x.mm(), length.mm(), radius.mm()));
    }

    /** The profile in words. */
    @Override
    public String toString() {
      return "rollers crowned with r = " + radius;
    }
  }

  /**
   * Given profile.
   *
   * @param drops P at evenly spaced stations from end to end
   */
  record Given(List<Length> drops) implements RollerProfile {
    // Keeps an unmodifiable copy and refuses what is no profile.
    public Given {
      Objects.requireNonNull(drops, "drops");
      drops = List.copyOf(drops);
      Check.within(drops.size(), 2, 100_000, "stations of the profile", "", "a profile has two ends");
      drops.forEach(drop -> ProfileKernel.drop(drop.mm()));
    }

    @Override
    public Length drop(Length x, Length length, Length diameter) {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(diameter, "diameter");
      double[] stations = drops.stream().mapToDouble(Length::mm).toArray();
      return new Length(ProfileKernel.given(x.mm(), length.mm(), stations));
    }

    /** The profile in words. */
    @Override
    public String toString() {
      return "given profile of " + drops.size() + " stations";
    }
  }
}
