package org.standproud.mechanics.gathering;

import org.standproud.mechanics.force.PassForces;
import org.standproud.setup.Setup;

final class ContactFacts {
  static void state(PassForces forces, Setup setup, FactSheet sheet) {}
}
