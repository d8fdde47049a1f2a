package org.standproud.web.recorded;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.standproud.api.problem.NotThere;
import org.standproud.audit.store.Records;
import org.standproud.audit.store.StoredRecord;

/** Finds recorded assessments. */
@Component
public class RecordedAnswers {

  private final Records records;

  RecordedAnswers(Records records) {
    this.records = records;
  }

  /**
   * The record of an assessment.
   *
   * @param id its id
   * @throws NotThere if there is none
   */
  public StoredRecord record(UUID id) {
    return records.find(id).orElseThrow(() -> new NotThere("No assessment has the id " + id + "."));
  }

  /**
   * An assessment read back.
   *
   * @param id its id
   * @throws NotThere if there is none
   */
  public RecordedAnswer answer(UUID id) {
    return RecordedAnswer.of(record(id).record().account());
  }
}
