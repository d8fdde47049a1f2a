package org.standproud.mechanics.gathering;

import static org.standproud.mechanics.evidence.Vocabulary.*;

import org.standproud.mechanics.force.PassForces;
import org.standproud.setup.Setup;

final class ContactFacts {
  static void state(PassForces forces, Setup setup, FactSheet sheet) {
    sheet.missing(FIRST_CONTACT_PULLS, "x", FactSheet.Basis.on());
    sheet.missing(FIRST_CONTACT_JAW, "x", FactSheet.Basis.on());
    sheet.missing(FIRST_CONTACT_FORCE, "x", FactSheet.Basis.on());
  }
}
