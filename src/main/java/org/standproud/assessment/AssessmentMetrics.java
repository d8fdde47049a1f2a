package org.standproud.assessment;

import java.util.Locale;
import java.util.function.Supplier;
import org.standproud.audit.AuditRecord;
import org.standproud.setup.Worded;

/** Watches assessments being made. */
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
    /** From the request to the set-up. */
    READING,
    /** From the set-up to the evidence. */
    MECHANICS,
    /** From the evidence to what the cards say. */
    RULES,
    /** From that to a verdict, and all of it into canonical text. */
    ADVICE,
    /** Until it is on disk. */
    STORING;

    @Override
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A stage under way, which ends when it is closed. */
  interface Lap extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * Sees a stage begin.
   *
   * @param stage the stage
   */
  Lap begin(Stage stage);

  /**
   * Sees a stage begin and end.
   *
   * @param stage the stage
   * @param work what is done in it
   * @return what the work gives
   */
  default <T> T stage(Stage stage, Supplier<T> work) {
    try (Lap lap = begin(stage)) {
      return work.get();
    }
  }

  /**
   * Sees an answer given.
   *
   * @param record the record, which is on disk
   */
  void answered(AuditRecord record);
}
