// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerSize;
import java.io.Serializable;
import java.util.Objects;

/**
 * What a port plan is asked for.
 *
 * @param system metric or inch
 * @param outsideDiameter outside diameter D of the roller, over 0
 * @param studDiameter stud diameter d1, over 0 and below D
 * @param openings openings of the stud as drilled
 * @param headForm form of the head
 * @param fittingInSocket whether a grease fitting is built into the hexagon socket
 * @param eccentricCollar whether the stud sits in an eccentric collar
 * @param seatFeedHole whether the machine member has a feed hole that meets the radial port
 * @param feed the port through which the roller is to be fed
 */
public record PortRequest(
    MeasureSystem system,
    Length outsideDiameter,
    Length studDiameter,
    Openings openings,
    HeadForm headForm,
    boolean fittingInSocket,
    boolean eccentricCollar,
    boolean seatFeedHole,
    Port feed)
    implements Serializable {
  // Refuses sizes that cannot be and a socket fitting without a socket.
  public PortRequest {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(studDiameter, "studDiameter");
    Objects.requireNonNull(openings, "openings");
    Objects.requireNonNull(headForm, "headForm");
    Objects.requireNonNull(feed, "feed");
    Check.positive(studDiameter.mm(), "stud diameter d1", "mm", "it is a diameter");
    if (!(outsideDiameter.mm() > studDiameter.mm())) {
      throw new InputException("outside diameter D", outsideDiameter.toString(), "above d1 = " + studDiameter,
          "the stud is inside the ring");
    }
    if (fittingInSocket && headForm != HeadForm.HEXAGON_SOCKET) {
      throw new InputException("fitting in the socket", "present", "absent with a head that has a " + headForm,
          "only a hexagon socket takes it");
    }
    if (fittingInSocket && !openings.head()) {
      throw new InputException("fitting in the socket", "present", "absent when the head end has no opening",
          "the fitting sits in the mouth of the axial bore");
    }
  }

  /**
   * Starts with a tabulated size: usual openings, slotted head, no collar, no feed hole in the seat.
   *
   * @param size the size
   * @param feed the wanted port
   * @return the request
   */
  public static PortRequest of(RollerSize size, Port feed) {
    Objects.requireNonNull(size, "size");
    return of(size.series().system(), size.outsideDiameter(), size.stud().diameter(), feed);
  }

  /**
   * Starts with diameters: usual openings of that size, slotted head, no collar, no feed hole in the seat.
   *
   * @param system metric or inch
   * @param outsideDiameter outside diameter D of the roller, over 0
   * @param studDiameter stud diameter d1, over 0 and below D
   * @param feed the wanted port
   * @return the request
   * @throws InputException if a diameter is outside its range
   */
  public static PortRequest of(MeasureSystem system, Length outsideDiameter, Length studDiameter, Port feed) {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(studDiameter, "studDiameter");
    return new PortRequest(system, outsideDiameter, studDiameter, Openings.usual(system, studDiameter, outsideDiameter),
        HeadForm.SLOT, false, false, false, feed);
  }

  /**
   * The same with the openings of the part in hand.
   *
   * @param found the openings
   * @return the request
   */
  public PortRequest withOpenings(Openings found) {
    Objects.requireNonNull(found, "found");
    return new PortRequest(system, outsideDiameter, studDiameter, found, headForm, fittingInSocket, eccentricCollar,
        seatFeedHole, feed);
  }

  /**
   * The same with a head form.
   *
   * @param form the form; no fitting in the socket
   * @return the request
   */
  public PortRequest withHead(HeadForm form) {
    Objects.requireNonNull(form, "form");
    return new PortRequest(system, outsideDiameter, studDiameter, openings, form, false, eccentricCollar, seatFeedHole, feed);
  }

  /**
   * The same with a hexagon socket that holds a built-in fitting.
   *
   * @return the request
   */
  public PortRequest withFittingInSocket() {
    return new PortRequest(system, outsideDiameter, studDiameter, openings, HeadForm.HEXAGON_SOCKET, true, eccentricCollar,
        seatFeedHole, feed);
  }

  /**
   * The same with an eccentric collar.
   *
   * @return the request
   */
  public PortRequest withEccentricCollar() {
    return new PortRequest(system, outsideDiameter, studDiameter, openings, headForm, fittingInSocket, true, seatFeedHole,
        feed);
  }

  /**
   * The same with a feed hole in the machine member.
   *
   * @return the request
   */
  public PortRequest withSeatFeedHole() {
    return new PortRequest(system, outsideDiameter, studDiameter, openings, headForm, fittingInSocket, eccentricCollar, true,
        feed);
  }

  /**
   * The same with another wanted port.
   *
   * @param wanted the port
   * @return the request
   */
  public PortRequest withFeed(Port wanted) {
    Objects.requireNonNull(wanted, "wanted");
    return new PortRequest(system, outsideDiameter, studDiameter, openings, headForm, fittingInSocket, eccentricCollar,
        seatFeedHole, wanted);
  }
}
