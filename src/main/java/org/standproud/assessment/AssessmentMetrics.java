package org.standproud.assessment;

import java.util.Locale;
import java.util.function.Supplier;
import org.standproud.audit.AuditRecord;
import org.standproud.setup.Worded;

/** Observes assessments. */
public interface AssessmentMetrics {

  /** Measures nothing. */
  AssessmentMetrics NONE =
      new AssessmentMetrics() {
        @Override
        public Lap begin(Stage stage) {
          return () -> {};
        }

        @Override
        public void answered(AuditRecord record) {}
      };

  /** A stage of an assessment. */
  enum Stage implements Worded {
    /** Request to set-up. */
    READING,
    /** Set-up to evidence. */
    MECHANICS,
    /** Evidence to trace. */
    RULES,
    /** Trace to verdict and canonical text. */
    ADVICE,
    /** Storing on disk. */
    STORING;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A running stage, which ends when it is closed. */
  interface Lap extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * A stage begins.
   *
   * @param stage the stage
   */
  Lap begin(Stage stage);

  /**
   * Runs a stage.
   *
   * @param stage the stage
   * @param work the stage
   * @return its result
   */
  default <T> T stage(Stage stage, Supplier<T> work) {
    try (Lap lap = begin(stage)) {
      return work.get();
    }
  }

  /**
   * An answer was sent.
   *
   * @param record its record, which is on disk
   */
  void answered(AuditRecord record);
}
