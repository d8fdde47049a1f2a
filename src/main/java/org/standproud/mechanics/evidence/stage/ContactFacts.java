package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.FILLING_JUMP;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_JAW;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_PULL;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_PULLS;

import java.util.function.IntToDoubleFunction;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.setup.JawSide;
import org.standproud.setup.request.CutFields;

/** What the first touch does to the stock. */
final class ContactFacts {

  private ContactFacts() {}

  static void state(DrawnCut cut, FactSheet sheet) {
    Basis basis = ForceFacts.basis(cut).and(Basis.on(CutFields.FEED, CutFields.LEAD_IN));
    int n = cut.draws();
    double offsetM = cut.setup().cut().offsetM();
    boolean beyond = Math.abs(offsetM) > cut.setup().stock().thicknessM() / 2;
    IntToDoubleFunction acrossN = cut.ofPass(p -> p.blow().yN());
    sheet.yesNo(
        FIRST_CONTACT_PULLS,
        DrawSet.where(n, draw -> beyond && acrossN.applyAsDouble(draw) * Math.signum(offsetM) > 0),
        basis);
    sheet.number(
        FIRST_CONTACT_PULL,
        n,
        draw -> beyond ? acrossN.applyAsDouble(draw) * Math.signum(offsetM) : 0,
        basis);
    sheet.word(
        FIRST_CONTACT_JAW,
        DrawSet.where(n, draw -> acrossN.applyAsDouble(draw) >= 0),
        JawSide.FIXED,
        JawSide.MOVABLE,
        basis);
    sheet.number(
        FILLING_JUMP,
        n,
        cut.ofPass(p -> Math.max(0, p.fillingInPlaneN() - p.blow().inPlaneN())),
        basis);
    sheet.number(
        FIRST_CONTACT_FORCE,
        n,
        cut.ofPass(
            p -> Math.max(0, p.blow().yN() >= 0 ? p.fillingGreatestYN() : -p.fillingLeastYN())),
        basis);
  }
}
