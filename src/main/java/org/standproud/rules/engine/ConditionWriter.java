package org.standproud.rules.engine;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.LazyList;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.MarginFinder;
import org.standproud.rules.trace.Reading;

/**
 * Evaluates a condition and writes its trace.
 *
 * @param readings the values of the facts
 * @param judgements the judgements the condition may read
 * @param margins finds margins over both
 * @param behind the facts behind each judgement
 */
record ConditionWriter(
    Readings readings,
    Judgements judgements,
    MarginFinder margins,
    Map<String, List<Fact>> behind) {

  static ConditionWriter of(
      Readings readings, Judgements judgements, Map<String, List<Fact>> behind, double level) {
    return new ConditionWriter(
        readings, judgements, new MarginFinder(readings, judgements, level), behind);
  }

  ConditionTrace trace(PreparedCondition prepared) {
    Condition condition = prepared.condition();
    if (condition instanceof Condition.Comparison) {
      // The comparison of the margin decides the truth: it is evaluated once.
      Margin margin = margins.of(condition);
      return trace(
          prepared,
          margin == null ? condition.evaluate(readings, judgements) : margin.draws(),
          margin);
    }
    DrawTruth truth = condition.evaluate(readings, judgements);
    return trace(prepared, truth, truth.truth() == Truth.UNKNOWN ? null : margins.of(condition));
  }

  private ConditionTrace trace(
      PreparedCondition prepared, DrawTruth truth, @Nullable Margin margin) {
    return new ConditionTrace(
        prepared.text(),
        prepared.words(),
        truth,
        new LazyList<>() {
          @Override
          protected List<Reading> made() {
            return read(prepared);
          }
        },
        truth.truth() == Truth.UNKNOWN
            ? new LazyList<>() {
              @Override
              protected List<String> made() {
                return prepared.condition().unknowns(readings, judgements);
              }
            }
            : List.of(),
        margin);
  }

  private List<Reading> read(PreparedCondition prepared) {
    return prepared.reads(behind).stream().map(f -> new Reading(f, readings.value(f))).toList();
  }
}
