package org.standproud.advice.remedy;

import java.util.List;
import org.standproud.advice.whatif.Judged;
import org.standproud.setup.Setup;

/**
 * Changes with the changed set-up and its judgement.
 *
 * @param steps the changes
 * @param setup the set-up
 * @param judged the judgement
 */
record ProvenChange(List<Step> steps, Setup setup, Judged judged) {

  ProvenChange {
    steps = List.copyOf(steps);
  }
}
