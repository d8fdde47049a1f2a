package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.FILLING_JUMP;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_JAW;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_PULL;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_PULLS;

import org.standproud.mechanics.direction.FirstContact;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.PathForces;
import org.standproud.setup.Band;
import org.standproud.setup.JawSide;

/** What the first touch does to the stock. */
final class ContactFacts {

  private ContactFacts() {}

  static void state(FirstContact contact, PassForces forces, FactSheet sheet) {
    Basis basis = ForceFacts.basis(forces).and(Basis.on("cut.feed", "cut.leadIn"));
    Band acrossN = contact.force().yN();
    Band pullN = contact.pullTowardCutterN();
    // Where the bands leave it open which way the blow points, it counts as a pull.
    sheet.yesNo(FIRST_CONTACT_PULLS, pullN != null && pullN.high() > 0, basis);
    sheet.number(FIRST_CONTACT_PULL, pullN == null ? Band.exactly(0) : pullN, basis);
    sheet.word(FIRST_CONTACT_JAW, acrossN.likely() >= 0 ? JawSide.FIXED : JawSide.MOVABLE, basis);
    sheet.number(FILLING_JUMP, contact.jumpWhileFillingN(), basis);
    sheet.number(FIRST_CONTACT_FORCE, acrossWhileFilling(forces, acrossN.likely() >= 0), basis);
  }

  /** Greatest push across the stock to one jaw until the whole arc is in the stock. */
  private static Band acrossWhileFilling(PassForces forces, boolean towardFixed) {
    return PathForces.greatest(
            forces.path().filling(),
            there -> towardFixed ? there.y().greatestN() : there.y().leastN().times(-1))
        .map(n -> Math.max(0, n));
  }
}
