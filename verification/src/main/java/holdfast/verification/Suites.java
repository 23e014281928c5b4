// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.verification.bearings.BearingSuites;
import holdfast.verification.contact.ContactSuites;
import holdfast.verification.fits.FitSuites;
import holdfast.verification.fits.InchSuites;
import holdfast.verification.reference.ReferenceLifeSuites;
import holdfast.verification.installation.InstallationSuites;
import holdfast.verification.questions.QuestionSuites;
import holdfast.verification.seats.SeatSuites;
import holdfast.verification.threads.ThreadSuites;
import java.util.ArrayList;
import java.util.List;

/** All suites, subject by subject. */
public final class Suites {
  private Suites() {}

  /**
   * All suites.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    List<Suite> suites = new ArrayList<>();
    suites.addAll(List.of(new UnitFactorSuite()));
    suites.addAll(FitSuites.all());
    suites.addAll(InchSuites.all());
    suites.addAll(SeatSuites.all());
    suites.addAll(ContactSuites.all());
    suites.addAll(ThreadSuites.all());
    suites.addAll(BearingSuites.all());
    suites.addAll(ReferenceLifeSuites.all());
    suites.addAll(InstallationSuites.all());
    suites.addAll(QuestionSuites.all());
    return List.copyOf(suites);
  }
}
