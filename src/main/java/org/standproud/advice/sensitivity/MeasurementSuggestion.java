package org.standproud.advice.sensitivity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Verdict;
import org.standproud.setup.request.FieldPointer;

/**
 * One thing to find out.
 *
 * @param input where it stands in the request
 * @param measure how to find out
 * @param changesVerdict whether the verdict depends on it
 * @param share part of the uncertainty of the deciding fact, on its bad side, that goes if this is
 *     known to be as it is likely to be; 0 to 1, null if no value of it is likelier
 * @param answers what the answer would be for each thing it may turn out to be
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
   * The answer if the input is so.
   *
   * @param value what it turns out to be
   * @param verdict what to do then
   * @param score the score then
   * @param stops stops that stand then
   */
  public record Outcome(String value, Verdict verdict, int score, List<String> stops) {

    /** Copies the list. */
    public Outcome {
      stops = List.copyOf(stops);
    }
  }
}
