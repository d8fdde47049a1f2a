package org.standproud.assessment;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.records.EvidenceDigest;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.request.CanonicalText;

/**
 * What is kept to judge an assessment again: the resolved set-up. Its evidence is a joint sample,
 * of which a record keeps percentiles only, and judging percentiles would treat dependent numbers
 * as independent; computed again from the set-up, the evidence is the same draw for draw, because
 * the seed comes from the set-up. A set-up of an earlier version is judged by today's mechanics.
 *
 * <p>A version byte, then the canonical text of the set-up in UTF-8.
 */
@Component
public final class SetupInShort implements EvidenceDigest {

  private static final byte VERSION = 2;

  @Override
  public byte @Nullable [] of(AuditRecord record) {
    CanonicalJson setup = record.account().setup();
    return setup.equals(Mask.NO_ACCOUNT.setup()) ? null : of(setup);
  }

  /** The bytes of a set-up in memory: the same as {@link #of(AuditRecord)} for its record. */
  static byte[] of(CanonicalJson setup) {
    byte[] text = setup.text().getBytes(StandardCharsets.UTF_8);
    byte[] bytes = new byte[text.length + 1];
    bytes[0] = VERSION;
    System.arraycopy(text, 0, bytes, 1, text.length);
    return bytes;
  }

  @Override
  public boolean reads(byte[] kept) {
    return kept.length > 0 && kept[0] == VERSION;
  }

  /** Bytes of another version were checked when stored; this program cannot check them. */
  @Override
  public boolean agree(byte[] kept, AuditRecord record) {
    return !reads(kept) || EvidenceDigest.super.agree(kept, record);
  }

  /**
   * Computes the evidence of a stored set-up again.
   *
   * @param kept bytes that {@link #of} returned
   * @throws IllegalArgumentException if it is of another version, or unreadable
   */
  public static Evidence evidence(byte[] kept) {
    if (kept.length == 0 || kept[0] != VERSION) {
      throw new IllegalArgumentException("a set-up in short of another version");
    }
    String text = new String(kept, 1, kept.length - 1, StandardCharsets.UTF_8);
    return EvidenceGathering.of(CanonicalText.setup(text));
  }
}
