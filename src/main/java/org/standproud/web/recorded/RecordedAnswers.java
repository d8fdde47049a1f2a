package org.standproud.web.recorded;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoredRecord;
import org.standproud.refusal.NotFoundException;

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
   * @throws NotFoundException if there is none
   */
  public StoredRecord record(UUID id) {
    return records
        .find(id)
        .orElseThrow(() -> new NotFoundException("No assessment has the id " + id + "."));
  }

  /**
   * Reads an assessment back.
   *
   * @param id its id
   * @throws NotFoundException if there is none
   */
  public RecordedAnswer answer(UUID id) {
    return RecordedAnswer.of(record(id).record().account());
  }
}
