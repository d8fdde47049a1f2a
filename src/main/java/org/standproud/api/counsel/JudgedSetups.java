package org.standproud.api.counsel;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.ErrorResponseException;
import org.standproud.api.problem.NotThere;
import org.standproud.audit.store.Records;
import org.standproud.audit.store.StoredRecord;
import org.standproud.setup.Setup;
import org.standproud.setup.reading.CanonicalText;

/** The set-ups of assessments as they were recorded. */
@Component
class JudgedSetups {

  private final Records records;

  JudgedSetups(Records records) {
    this.records = records;
  }

  /**
   * The set-up of one assessment.
   *
   * @param id of the assessment
   * @throws NotThere if there is no such assessment
   * @throws ErrorResponseException if its text was withheld
   */
  Setup of(UUID id) {
    StoredRecord stored =
        records.find(id).orElseThrow(() -> new NotThere("No assessment has the id " + id + "."));
    if (stored.gone()) {
      throw new ErrorResponseException(HttpStatus.GONE);
    }
    byte[] text = stored.record().account().setup().utf8();
    return CanonicalText.setup(new String(text, StandardCharsets.UTF_8));
  }
}
