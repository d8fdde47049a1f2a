package org.standproud.advice.remedy;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.standproud.advice.Verdict;
import org.standproud.advice.compare.FieldChange;
import org.standproud.setup.Setup;

/**
 * A change that was judged again, in the caller's units.
 *
 * @param kinds the kinds of change, in words
 * @param changes every field that changes, with old and new value
 * @param argument what to do and why, in two sentences
 * @param verdict verdict of the changed set-up
 * @param score its score
 * @param clears findings that disappear
 * @param eases findings that become less severe
 * @param appears findings that appear or become more severe
 * @param stopsLeft stops that remain
 * @param cost its cost in time
 * @param needs what the shop needs or must provide for it
 * @param changed the changed set-up; not serialized, because the changes describe it
 */
public record Remedy(
    List<String> kinds,
    List<FieldChange> changes,
    String argument,
    Verdict verdict,
    int score,
    List<String> clears,
    List<String> eases,
    List<String> appears,
    List<String> stopsLeft,
    Cost cost,
    List<String> needs,
    @JsonIgnore Setup changed) {

  /** Copies the lists. */
  public Remedy {
    kinds = List.copyOf(kinds);
    changes = List.copyOf(changes);
    clears = List.copyOf(clears);
    eases = List.copyOf(eases);
    appears = List.copyOf(appears);
    stopsLeft = List.copyOf(stopsLeft);
    needs = List.copyOf(needs);
  }
}
