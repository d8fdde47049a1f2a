package org.standproud.assessment.metrics;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.springframework.stereotype.Component;
import org.standproud.assessment.AssessmentMetrics;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordedFinding;
import org.standproud.shop.RuleBaseHolder;

/**
 * Metrics: time of each stage, answers, findings by card, denials. They name cards, never jobs or
 * callers.
 */
@Component
class MeterRegistryMetrics implements AssessmentMetrics {

  private static final Duration[] LIMITS =
      LongStream.of(1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)
          .mapToObj(Duration::ofMillis)
          .toArray(Duration[]::new);

  private final MeterRegistry meters;
  private final Map<Stage, Timer> timers = new EnumMap<>(Stage.class);

  MeterRegistryMetrics(MeterRegistry meters, RuleBaseHolder rules) {
    this.meters = meters;
    for (Stage stage : Stage.values()) {
      timers.put(stage, timer(stage, meters));
    }
    Gauge.builder("standproud.cards", rules, MeterRegistryMetrics::cards)
        .description("Cards of the rule base in service; none if there is no rule base.")
        .register(meters);
  }

  private static double cards(RuleBaseHolder rules) {
    return rules.ruleBase().map(base -> base.cards().size()).orElse(0);
  }

  @Override
  public Lap begin(Stage stage) {
    long start = System.nanoTime();
    Timer timer = Objects.requireNonNull(timers.get(stage));
    return () -> timer.record(System.nanoTime() - start, TimeUnit.NANOSECONDS);
  }

  @Override
  public void answered(AuditRecord record) {
    Counter.builder("standproud.assessments")
        .description("Answers given.")
        .tag("verdict", record.judged().verdict())
        .register(meters)
        .increment();
    record.findings().forEach(this::spoke);
  }

  private void spoke(RecordedFinding finding) {
    Counter.builder("standproud.findings")
        .description("Findings in answers given: fail if the card flagged, open if it could not.")
        .tag("card", finding.cardId())
        .tag("kind", finding.kind())
        .tag("severity", finding.severity())
        .register(meters)
        .increment();
  }

  private static Timer timer(Stage stage, MeterRegistry meters) {
    return Timer.builder("standproud.stage")
        .description("Time that a stage of an assessment took.")
        .tag("stage", stage.words())
        .serviceLevelObjectives(LIMITS)
        .register(meters);
  }
}
