package holdfast.installation;

import holdfast.bearings.Reliability;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import java.io.Serializable;

/**
 * What the roller has to do.
 *
 * @param load radial load on the roller, over 0
 * @param speed speed of the outer ring, over 0
 * @param wantedLife hours that it shall run, over 0
 * @param reliability reliability with which it shall reach them
 * @param workingTemperature temperature of stud and machine member at work
 */
public record Duty(
    Force load, RotationalSpeed speed, OperatingTime wantedLife, Reliability reliability, Temperature workingTemperature)
    implements Serializable {

  // Refuses a duty without load, speed or time.
  public Duty {
    Check.positive(load.newton(), "load", "N", "a roller without load has no duty");
    Check.positive(speed.rpm(), "speed", "rpm", "a roller that stands has no rating life");
    Check.positive(wantedLife.hours(), "wanted life", "h", "it is a time");
  }
}
