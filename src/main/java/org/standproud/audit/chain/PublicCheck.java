package org.standproud.audit.chain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import org.standproud.audit.chain.ChainFault.Kind;

/**
 * The check without a secret: from checkpoint to checkpoint the {@link ChainDigest} of the stored
 * records must equal the signed one.
 *
 * <p>It locates a change between two checkpoints, no closer; {@link ChainVerifier}, with the chain
 * key, names the record. Statements of the first version need that key and are skipped.
 */
public final class PublicCheck implements ChainCheck {

  private final Map<String, VerifyingKey> signers = new HashMap<>();
  private final NavigableMap<Long, Checkpoint> stated = new TreeMap<>();
  private final List<ChainFault> faults = new ArrayList<>();
  private final WithheldTexts withheld = new WithheldTexts();
  private String digest = ChainDigest.START;
  private String lastSeal = ChainKey.GENESIS;
  private long last;
  private long proved;

  /**
   * A check that begins at the first record.
   *
   * @param signers the public keys its checkpoints may be signed with
   */
  public PublicCheck(Collection<VerifyingKey> signers) {
    signers.forEach(s -> this.signers.put(s.id(), s));
  }

  @Override
  public void hold(Checkpoint checkpoint) {
    VerifyingKey signer = signers.get(checkpoint.keyId());
    if (checkpoint.digest() == null) {
      return;
    } else if (signer == null) {
      fault(Kind.CHECKPOINT_OF_OTHER_KEY, checkpoint.sequence(), "Its key was not given");
    } else if (!signer.signed(checkpoint)) {
      fault(Kind.CHECKPOINT_FORGED, checkpoint.sequence(), "This checkpoint was not signed so");
    } else {
      Checkpoint other = stated.putIfAbsent(checkpoint.sequence(), checkpoint);
      if (other != null && !Objects.equals(other.digest(), checkpoint.digest())) {
        fault(Kind.REWRITTEN, checkpoint.sequence(), "Two checkpoints state different records");
      }
    }
  }

  @Override
  public boolean next(Link link) {
    long place = link.sequence();
    if (place <= last) {
      fault(Kind.REORDERED, place, "This record stands after record " + last);
      return false;
    }
    if (!Hex64.is(link.seal()) || !Hex64.is(link.digest())) {
      fault(Kind.EDITED, place, "This record has no seal or digest");
      return false;
    }
    boolean follows = follows(link);
    withheld.see(link);
    digest = ChainDigest.after(digest, link);
    last = place;
    lastSeal = link.seal();
    prove();
    return follows;
  }

  private boolean follows(Link link) {
    if (link.sequence() > last + 1) {
      long first = last + 1;
      long until = link.sequence() - 1;
      String missing = (until - first + 1) + " record(s) missing before record " + (until + 1);
      faults.add(new ChainFault(Kind.DELETED, first, until, missing));
      return false;
    }
    if (!link.previous().equals(lastSeal)) {
      fault(Kind.REWRITTEN, link.sequence(), "This record does not follow the one before it");
      return false;
    }
    return true;
  }

  private void prove() {
    Checkpoint checkpoint = stated.get(last);
    if (checkpoint == null) {
      return;
    }
    if (!digest.equals(checkpoint.digest())) {
      String explanation =
          "Among these is a record that is not as it was when the checkpoint was signed";
      faults.add(new ChainFault(Kind.EDITED, proved + 1, last, explanation));
      digest = Objects.requireNonNull(checkpoint.digest());
      lastSeal = checkpoint.seal();
    }
    proved = last;
  }

  @Override
  public void fault(Kind kind, long place, String explanation) {
    faults.add(new ChainFault(kind, place, place, explanation));
  }

  @Override
  public ChainReport finish() {
    long end = stated.isEmpty() ? 0 : stated.lastKey();
    if (end > last) {
      String missing = (end - last) + " record(s) missing at the end";
      faults.add(new ChainFault(Kind.TRUNCATED, last + 1, end, missing));
    } else if (last > proved) {
      String unproved = "No signed checkpoint speaks for these records";
      faults.add(new ChainFault(Kind.UNPROVED, proved + 1, last, unproved));
    }
    withheld.report(this);
    return new ChainReport(faults.isEmpty() ? last : proved, last, faults);
  }
}
