package org.standproud.assessment;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.util.unit.DataSize;
import org.standproud.settings.SettingRefused;

/**
 * Limits of requests.
 *
 * @param largestBody most bytes of a request, or of a line of a batch
 * @param mostLines most lines of one batch or table
 * @param mostBatches batches and tables at a time, at each replica
 * @param slowestBody how long a body may take to arrive, apart from batches
 */
@ConfigurationProperties("standproud.api")
public record ApiProperties(
    DataSize largestBody, long mostLines, int mostBatches, Duration slowestBody) {

  /** Checks the values. */
  public ApiProperties {
    SettingRefused.size("standproud.api.largest-body", largestBody);
    SettingRefused.range("standproud.api.most-lines", mostLines, 1, Long.MAX_VALUE);
    SettingRefused.range("standproud.api.most-batches", mostBatches, 1, Integer.MAX_VALUE);
    SettingRefused.positive("standproud.api.slowest-body", slowestBody);
  }
}
