package org.standproud.assessment.retention;

import java.time.Period;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.audit.Mask;
import org.standproud.settings.SettingRefused;

/**
 * How long texts are kept.
 *
 * @param records how long records keep their texts, such as P10Y; empty to keep them without limit
 * @param mask what is then removed from them: caller, caller-and-job or account
 * @param journal how long the journal of access is kept, such as P1Y; empty to keep them without
 *     limit
 */
@ConfigurationProperties("standproud.retention")
record RetentionProperties(@Nullable Period records, Mask mask, @Nullable Period journal) {

  RetentionProperties {
    positive("standproud.retention.records", records);
    positive("standproud.retention.journal", journal);
    SettingRefused.given(
        "standproud.retention.mask", mask, "One of caller, caller-and-job, account is allowed.");
  }

  private static void positive(String property, @Nullable Period period) {
    if (period != null && (period.isZero() || period.isNegative())) {
      throw new SettingRefused(property, period, "A period above zero is allowed, such as P10Y.");
    }
  }
}
