package org.standproud.advice.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.standproud.advice.whatif.CutterSwap;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.Trials;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Stage;

/** Ways to run one pass that cost nothing: position of the cutter and direction of feed. */
final class Variants {

  private final Trials trials;

  Variants(Trials trials) {
    this.trials = trials;
  }

  /** The best variant by verdict, then score; as proposed if none is better. */
  Setup best(Setup pass) {
    Set<Setup> all = new LinkedHashSet<>();
    for (Setup placed : placed(pass)) {
      all.add(placed);
      all.add(SetupEditor.of(placed).reversed().done());
    }
    return all.stream()
        .min(
            Comparator.comparing((Setup s) -> judged(s).verdict())
                .thenComparing(s -> -judged(s).left()))
        .orElse(pass);
  }

  Judged judged(Setup pass) {
    return trials.of(pass);
  }

  /** As proposed; on a top edge also over the middle, and for a last pass near either rim. */
  private static List<Setup> placed(Setup pass) {
    List<Setup> places = new ArrayList<>(List.of(pass));
    double room = (pass.cutter().diameterM() - pass.stock().thicknessM()) / 2;
    if (pass.cut().operation() == Operation.TOP_EDGE) {
      places.add(SetupEditor.of(pass).offset(0).done());
      if (pass.cut().stage() == Stage.FINISH && room > 0) {
        places.add(SetupEditor.of(pass).offset(0.8 * room).done());
        places.add(SetupEditor.of(pass).offset(-0.8 * room).done());
      }
    }
    return places;
  }

  /** A pass of some depth on stock that is already partly removed, both in m. */
  static Setup on(Setup setup, double goneM, double takesM, Stage stage) {
    double thicknessM = setup.stock().thicknessM();
    double heightM = setup.stock().heightM();
    if (setup.cut().operation() == Operation.TOP_EDGE) {
      return SetupEditor.of(setup)
          .size(thicknessM, heightM - goneM)
          .stage(stage)
          .depth(takesM)
          .done();
    }
    Setup thinner = SetupEditor.of(setup).size(thicknessM - goneM, heightM).stage(stage).done();
    return CutterSwap.withSideDepth(thinner, takesM);
  }
}
