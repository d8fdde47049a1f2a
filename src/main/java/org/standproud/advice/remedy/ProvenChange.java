package org.standproud.advice.remedy;

import java.util.List;
import org.standproud.advice.whatif.Judged;
import org.standproud.setup.Setup;

/**
 * Changes with the set-up they give and what the cards say of it.
 *
 * @param steps the changes
 * @param setup the set-up
 * @param judged what the cards say
 */
record ProvenChange(List<Step> steps, Setup setup, Judged judged) {

  ProvenChange {
    steps = List.copyOf(steps);
  }
}
