package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.seats.FrictionBand;
import holdfast.seats.OuterPart;
import java.io.Serializable;
import java.util.Objects;

/**
 * The lever, arm or block that takes the stud.
 *
 * @param name what the sheet calls it
 * @param body material and shape round the bore
 * @param boreTolerance tolerance class of the bore, for example {@code "N7"}
 * @param seatLength length over which stud and bore touch, chamfers not counted, over 0
 * @param pressingFriction band of friction while the stud is pressed in
 */
public record MachineMember(
    String name, OuterPart body, String boreTolerance, Length seatLength, FrictionBand pressingFriction)
    implements Serializable {

  // Refuses a seat without length.
  public MachineMember {
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(boreTolerance, "boreTolerance");
    Objects.requireNonNull(pressingFriction, "pressingFriction");
    Check.positive(seatLength.mm(), "seat length", "mm", "the stud needs a seat");
  }
}
