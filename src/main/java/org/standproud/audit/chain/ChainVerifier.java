package org.standproud.audit.chain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.standproud.audit.chain.ChainFault.Kind;

/**
 * Finds where a chain was broken, from its links in stored or exported order.
 *
 * <p>A link with a valid seal can only have been written by the holder of the key, in the position
 * it names. So valid links are laid out by position, gaps between them are noted, and links with an
 * invalid seal are matched with the gaps at the end: one that fits a gap was edited, one that is
 * valid in another gap was moved, one that fits none was inserted. The end of the chain beyond the
 * last valid link is known from checkpoints only; without any, a cut at the end cannot be detected.
 *
 * <p>Not thread-safe. Memory grows with the faults, not with the chain.
 */
public final class ChainVerifier implements ChainCheck {

  /** Positions tried for a moved record; beyond it a moved record is reported as edited. */
  private static final int PLACES_TRIED = 1_000;

  private final ChainKey key;
  private final Map<String, VerifyingKey> signers = new HashMap<>();
  private final WithheldTexts withheld = new WithheldTexts();
  private final NavigableMap<Long, String> stated = new TreeMap<>();
  private final List<ChainFault> faults = new ArrayList<>();
  private final List<Link> doubtful = new ArrayList<>();
  private final Gaps gaps = new Gaps();
  private boolean otherKey;
  private boolean ownKey;
  private long intact;
  private long highest;
  private String highestSeal = ChainKey.GENESIS;

  /**
   * A check that begins at the first record.
   *
   * @param key the chain key
   * @param signers the keys its checkpoints may be signed with
   */
  public ChainVerifier(ChainKey key, Collection<VerifyingKey> signers) {
    this.key = key;
    signers.forEach(s -> this.signers.put(s.id(), s));
  }

  @Override
  public void hold(Checkpoint checkpoint) {
    if (!checkpoint.sealedBy().equals(key.id())) {
      otherKey = true;
    } else if (signed(checkpoint)) {
      ownKey = true;
      state(checkpoint.sequence(), checkpoint.seal());
    }
  }

  private boolean signed(Checkpoint checkpoint) {
    VerifyingKey signer = signers.get(checkpoint.keyId());
    boolean firstVersion = checkpoint.digest() == null;
    if (!firstVersion && signer == null) {
      fault(Kind.CHECKPOINT_OF_OTHER_KEY, checkpoint.sequence(), "Its key was not given");
      return false;
    }
    boolean good = signer == null ? key.signed(checkpoint) : signer.signed(checkpoint);
    if (!good) {
      fault(Kind.CHECKPOINT_FORGED, checkpoint.sequence(), "This checkpoint was not signed so");
    }
    return good;
  }

  /** Adds the next link, and returns whether it is as sealed, wherever it is. */
  @Override
  public boolean next(Link link) {
    if (!key.sealed(link)) {
      doubtful.add(link);
      return false;
    }
    withheld.see(link);
    intact++;
    long place = link.sequence();
    if (place > highest) {
      advance(link);
    } else if (gaps.close(place)) {
      fault(Kind.REORDERED, place, "This record stands after record " + highest);
    } else {
      intact--;
      fault(Kind.INSERTED, place, "This record stands a second time");
    }
    String expected = stated.get(place);
    if (expected != null && !expected.equals(link.seal())) {
      fault(Kind.REWRITTEN, place, "A checkpoint states another record in this place");
    }
    return true;
  }

  @Override
  public void fault(Kind kind, long place, String explanation) {
    faults.add(new ChainFault(kind, place, place, explanation));
  }

  @Override
  public ChainReport finish() {
    if (otherKey && !ownKey && intact == 0) {
      ChainFault wrong =
          new ChainFault(Kind.WRONG_KEY, 0, 0, "Key " + key.id() + " did not seal this chain");
      return new ChainReport(0, 0, List.of(wrong));
    }
    long seen = highest;
    long end = stated.isEmpty() ? seen : Math.max(seen, stated.lastKey());
    gaps.open(seen + 1, end);
    doubtful.removeIf(this::moved);
    doubtful.forEach(this::editedOrInserted);
    gaps.ranges().forEach((first, last) -> reportMissing(first, last, seen));
    withheld.report(this);
    return new ChainReport(intact, seen, faults);
  }

  private void state(long place, String seal) {
    String other = stated.putIfAbsent(place, seal);
    if (other != null && !other.equals(seal)) {
      fault(Kind.REWRITTEN, place, "Two checkpoints state different records in this place");
    }
  }

  private void advance(Link link) {
    gaps.open(highest + 1, link.sequence() - 1);
    if (link.sequence() == highest + 1 && !link.previous().equals(highestSeal)) {
      fault(Kind.REWRITTEN, link.sequence(), "This record does not follow from the one before it");
    }
    highest = link.sequence();
    highestSeal = link.seal();
  }

  private boolean moved(Link link) {
    OptionalLong home = gaps.first(PLACES_TRIED, place -> key.sealed(at(place, link))).findFirst();
    home.ifPresent(
        place -> {
          gaps.close(place);
          fault(Kind.REORDERED, place, "This record was found as record " + link.sequence());
        });
    return home.isPresent();
  }

  private static Link at(long place, Link link) {
    return new Link(place, link.previous(), link.seal(), link.body(), link.withheld());
  }

  private void editedOrInserted(Link link) {
    if (gaps.close(link.sequence())) {
      fault(Kind.EDITED, link.sequence(), "This record is not as it was sealed");
    } else {
      fault(Kind.INSERTED, link.sequence(), "This record was not sealed with this key");
    }
  }

  private void reportMissing(long first, long last, long seen) {
    Kind kind = first > seen ? Kind.TRUNCATED : Kind.DELETED;
    String where = first > seen ? "the end" : "before record " + (last + 1);
    faults.add(
        new ChainFault(kind, first, last, (last - first + 1) + " record(s) missing at " + where));
  }
}
