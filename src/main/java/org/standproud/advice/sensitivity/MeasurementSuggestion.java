package org.standproud.advice.sensitivity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.setup.request.FieldPointer;

/**
 * One thing to measure or state.
 *
 * @param input the field of the request, as a JSON Pointer
 * @param measure how to measure it
 * @param changesVerdict whether the verdict depends on it
 * @param share part of the uncertainty of the deciding fact, on its bad side, that disappears if
 *     this is known to have its likely value; 0 to 1, null if no value of it is likelier
 * @param answers the answer for each value it may have
 */
public record MeasurementSuggestion(
    FieldPointer input,
    String measure,
    boolean changesVerdict,
    @Nullable Double share,
    List<Outcome> answers) {

  /** Copies the list. */
  public MeasurementSuggestion {
    answers = List.copyOf(answers);
  }

  /** Difference between the best and the worst score it may come to. */
  public int spread() {
    return answers.stream().mapToInt(Outcome::score).max().orElse(0)
        - answers.stream().mapToInt(Outcome::score).min().orElse(0);
  }

  /**
   * The answer for one value of the input.
   *
   * @param value the value
   * @param verdict the verdict then
   * @param score the score then
   * @param stops stops then
   */
  public record Outcome(String value, Verdict verdict, int score, List<String> stops) {

    /** Copies the list. */
    public Outcome {
      stops = List.copyOf(stops);
    }
  }
}
