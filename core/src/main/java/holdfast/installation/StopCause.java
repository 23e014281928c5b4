// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.Margin;

/** Why a job is not released, in the words of the bench: one sentence why, one or two what opens it. */
enum StopCause {
  SHANK_TOO_LONG("The nut would stop on the plain shank before it clamps.", "Take a thicker washer or a shorter stud."),
  STUD_TOO_SHORT("The stud ends inside the nut.", "Take a thinner nut or washer, or a longer stud."),
  NO_TORQUE("No torque holds this joint without overloading a part.",
      "Change what the record names under the torque window, then assess again."),
  SETTING_OUTSIDE("The wrench setting lies outside the torque window.", "Set the wrench inside the window of the record."),
  OVER_MAKERS_TORQUE("The wrench may give more torque than the maker of the roller permits.",
      "Lower the setting or take a better wrench."),
  STUD_OVERSTRESSED("Tightening would overstress the drilled stud.", "Lower the torque or take a stronger stud."),
  SHORT_LIFE("The roller would not last as long as the job asks.",
      "Take a larger roller, less load, better lubricant, or a shorter interval."),
  LEAN_COSTS_LIFE("The lean of the roller costs more life than the job can spare.",
      "Take a tighter bore or a straighter face, as the record says."),
  DIRT("What the job says about dirt contradicts itself.", "State the true dirt, protect the place, or take a sealed roller."),
  NO_FEED("The roller would run dry: no open way leads grease to it.", "Open the port that the record names."),
  NOTHING_HOLDS("Nothing holds the pin in its ears.", "Take a tighter bore, or secure the pin in another way."),
  SOFT_RACEWAY("The needles run on a pin that is too soft, or of unknown hardness.",
      "Take a hardened pin with a stated hardness."),
  BOUND_NEEDLES("The needles would bind on the pin.", "Take a smaller pin."),
  OVERLOAD("The load is more than a part of this job may carry.", "Take less load, a larger roller, or a harder track."),
  TOO_FAST("The roller would turn faster than it may.", "Slow the machine or take a larger roller."),
  HOT_OR_COLD("The place is hotter or colder than the roller may be.", "Shield the place or take a roller made for it."),
  SEAT("The fit presses a part beyond its strength, or takes the clearance of the roller.", "Take a looser bore."),
  LEANS("The roller would lean more than it may.", "Take a tighter bore or a straighter face and track.");

  private final String why;
  private final String opens;

  StopCause(String why, String opens) {
    this.why = why;
    this.opens = opens;
  }

  String why() {
    return why;
  }

  String opens() {
    return opens;
  }

  /** The cause of an exceeded limit, by the margin under which the table of failures knows it. */
  static StopCause of(Margin reading) {
    return switch (reading) {
      case SPEED, ACCELERATION -> TOO_FAST;
      case TEMPERATURE -> HOT_OR_COLD;
      case HOOP_STRESS, SEAT_CLEARANCE, HOLDING_TORQUE -> SEAT;
      case TILT -> LEANS;
      case LIFE, FILM -> SHORT_LIFE;
      case TIGHTENING_TORQUE, PRELOAD -> NO_TORQUE;
      case GREASE_PORT -> NO_FEED;
      case MINIMUM_LOAD, STATIC_LOAD, STUD_BENDING, RING_LOAD, TRACK_LOAD, LOAD_SHARING -> OVERLOAD;
    };
  }
}
