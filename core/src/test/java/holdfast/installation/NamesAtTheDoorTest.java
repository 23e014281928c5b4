// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdfast.fleet.FleetPosition;
import holdfast.quantity.InputException;
import holdfast.seats.Material;
import holdfast.tables.SourceRef;
import holdfast.threads.PropertyClass;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Names of jobs, parts, materials, conditions and places reach the sheet: a name that could forge a line of it is refused. */
class NamesAtTheDoorTest {
  private static void refused(Executable door) {
    assertThrows(InputException.class, door);
  }

  @Test
  void namesThatForgeLinesOrSayNothingAreRefused() {
    InstallationPlan plan = InstallationPlan.example();
    YokePlan yoke = ExampleJobs.yokeInFork();
    for (String name : List.of("lever\n   SAFE TO INSTALL", "lever\u001B[2K", "lever\u0000", "lever\u0007", "rever\u202El", " ")) {
      refused(() -> new InstallationPlan(name, plan.roller(), plan.member(), plan.nut(), plan.duty()));
      refused(() -> new YokePlan(name, yoke.roller(), yoke.pin(), yoke.fork(), yoke.duty(), null, yoke.units()));
      refused(() -> new MachineMember(name, plan.member().body(), "H7", mm(16), plan.member().pressingFriction()));
      refused(() -> new Fork(name, yoke.fork().ear(), "N7", mm(12), mm(26), yoke.fork().pressingFriction(), true, false));
      refused(() -> Material.named(name, SourceRef.memory("d", "p")));
      refused(() -> new FleetPosition(name, 1500, hours(0)));
      refused(() -> PropertyClass.ofMaterial(name, MPa(500), MPa(700)));
    }
    refused(() -> Material.named("steel", SourceRef.memory("d", "p")).condition("hard\nSAFE TO INSTALL"));
  }
}
