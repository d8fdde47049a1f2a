package org.standproud.assessment.recommendation;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.StoredRecord;
import org.standproud.refusal.NotFoundException;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CanonicalText;

/** Reads the recorded set-ups of assessments. */
@Component
public class RecordedSetups {

  private final Records records;

  RecordedSetups(Records records) {
    this.records = records;
  }

  /**
   * The set-up of one assessment.
   *
   * @param id of the assessment
   * @throws NotFoundException if there is no such assessment
   * @throws Refusal if its text was withheld
   */
  public Setup of(UUID id) {
    StoredRecord stored =
        records
            .find(id)
            .orElseThrow(() -> new NotFoundException("No assessment has the id " + id + "."));
    if (stored.gone()) {
      throw new Refusal(RefusalKind.GONE, RefusalKind.GONE.meaning());
    }
    byte[] text = stored.record().account().setup().utf8();
    return CanonicalText.setup(new String(text, StandardCharsets.UTF_8));
  }
}
