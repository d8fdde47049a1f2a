package org.standproud.advice.remedy;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.standproud.advice.Verdict;
import org.standproud.advice.compare.FieldChange;
import org.standproud.setup.Setup;

/**
 * A change that was judged again, in the caller's units.
 *
 * @param kinds what is changed, in words
 * @param changes every field that changes, with old and new value
 * @param argument what to do and why, in two sentences
 * @param verdict what to do with the changed set-up
 * @param score its score
 * @param clears findings that go
 * @param eases findings that stay but become less grave
 * @param appears findings that come, or become graver
 * @param stopsLeft stops that stand even so
 * @param cost what it costs in time
 * @param needs what the shop needs or has to see to for it
 * @param changed the set-up that was judged; not written, because the changes describe it
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
