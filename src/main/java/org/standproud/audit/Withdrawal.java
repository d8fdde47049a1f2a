package org.standproud.audit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The withdrawal of an acceptance.
 *
 * @param id its id
 * @param time time of the withdrawal
 * @param acceptance id of the acceptance
 * @param by the person who withdraws it
 * @param reason the reason
 */
public record Withdrawal(UUID id, Instant time, UUID acceptance, Person by, String reason)
    implements ChainRecord {

  /** Refuses a withdrawal without a reason. */
  public Withdrawal {
    time = time.truncatedTo(ChronoUnit.MICROS);
    Words.text("reason", reason);
  }

  @Override
  public CanonicalJson body() {
    return RecordType.WITHDRAWAL.write(this);
  }
}
