package org.standproud.assessment.idempotency;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.settings.SettingRefused;

/**
 * Repeated requests.
 *
 * @param kept how long an Idempotency-Key is stored
 */
@ConfigurationProperties("standproud.idempotency")
record IdempotencyProperties(Duration kept) {

  IdempotencyProperties {
    SettingRefused.positive("standproud.idempotency.kept", kept);
  }
}
