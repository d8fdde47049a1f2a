package org.standproud.advice.remedy;

import java.util.List;
import org.standproud.advice.trial.Judged;
import org.standproud.setup.Setup;

/**
 * Changes with the set-up they give and what the cards say of it.
 *
 * @param steps the changes
 * @param setup the set-up
 * @param judged what the cards say
 */
record Proved(List<Step> steps, Setup setup, Judged judged) {

  Proved {
    steps = List.copyOf(steps);
  }
}
