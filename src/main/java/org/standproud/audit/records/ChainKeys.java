package org.standproud.audit.records;

import java.time.Instant;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.Checkpoint;
import org.standproud.audit.chain.SigningKey;

/**
 * The two keys of a chain.
 *
 * @param key seals the records
 * @param signing signs checkpoints
 */
public record ChainKeys(ChainKey key, SigningKey signing) {

  Checkpoint state(RecordTables.Head head, Instant time) {
    return signing.sign(head.sequence(), head.seal(), head.known(), key.id(), time);
  }

  boolean signed(Checkpoint checkpoint) {
    return signing.verifying().signed(checkpoint) || key.signed(checkpoint);
  }
}
