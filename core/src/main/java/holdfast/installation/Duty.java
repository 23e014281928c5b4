package holdfast.installation;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import java.io.Serializable;
import java.util.Objects;

/**
 * What the roller has to do.
 *
 * @param load radial load on the roller, over 0
 * @param speed speed of the outer ring, over 0
 * @param wantedLife hours that it shall run, over 0
 * @param reliability reliability with which it shall reach them
 * @param staticSafety wanted safety S0 against the basic static load rating, 1 to 10
 * @param workingTemperature temperature of stud and machine member at work
 * @param viscosity viscosity of the oil, or of the base oil of the grease, at that temperature
 * @param contamination how clean the lubricant stays
 * @param track surface on which the roller runs
 * @param trackHardness hardness of the track in HRC, 20 to 58
 */
public record Duty(
    Force load,
    RotationalSpeed speed,
    OperatingTime wantedLife,
    Reliability reliability,
    double staticSafety,
    Temperature workingTemperature,
    KinematicViscosity viscosity,
    ContaminationLevel contamination,
    ContactSurface track,
    double trackHardness)
    implements Serializable {

  // Refuses a duty without load, speed or time.
  public Duty {
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(workingTemperature, "workingTemperature");
    Objects.requireNonNull(contamination, "contamination");
    Objects.requireNonNull(track, "track");
    Check.positive(load.newton(), "load", "N", "a roller without load has no duty");
    Check.positive(speed.rpm(), "speed", "rpm", "a roller that stands has no rating life");
    Check.positive(wantedLife.hours(), "wanted life", "h", "it is a time");
    Check.within(staticSafety, 1, 10, "static safety S0", "", "1 to 2 normal, 2 to 3 impact");
    Check.within(trackHardness, 20, 58, "hardness of the track", "HRC", "range of the hardness factors");
  }
}
