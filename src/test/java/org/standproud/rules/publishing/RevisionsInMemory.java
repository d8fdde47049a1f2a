package org.standproud.rules.publishing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A store for tests of what the desk does with one; it can be made to fail. */
final class RevisionsInMemory implements RevisionStore {

  private final List<StoredRevision> revisions = new ArrayList<>();
  private final Map<String, Map<String, String>> files = new HashMap<>();
  private final List<Proposal> proposals = new ArrayList<>();
  private boolean fails;

  void fails(boolean whether) {
    fails = whether;
  }

  /** Puts another text in the place of one that is kept. */
  void damage(String revision, Map<String, String> texts) {
    files.put(revision, Map.copyOf(texts));
  }

  @Override
  public synchronized List<StoredRevision> revisions() {
    return List.copyOf(revisions);
  }

  @Override
  public synchronized Optional<StoredRevision> latest() {
    return revisions.isEmpty()
        ? Optional.empty()
        : Optional.of(revisions.get(revisions.size() - 1));
  }

  @Override
  public synchronized boolean append(StoredRevision revision, Map<String, String> texts) {
    if (fails) {
      throw new IllegalStateException("the disk is full");
    }
    if (revision.number() != revisions.size() + 1) {
      return false;
    }
    revisions.add(revision);
    files.put(revision.id(), Map.copyOf(texts));
    return true;
  }

  @Override
  public synchronized Optional<Map<String, String>> files(String revision) {
    return Optional.ofNullable(files.get(revision));
  }

  @Override
  public synchronized Set<String> unseen(Map<String, String> some) {
    return some.entrySet().stream()
        .filter(f -> files.values().stream().noneMatch(kept -> kept.entrySet().contains(f)))
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  @Override
  public synchronized List<Proposal> proposals() {
    return List.copyOf(proposals);
  }

  @Override
  public synchronized void keep(Proposal proposal) {
    proposals.add(proposal);
  }

  @Override
  public synchronized void drop(String proposal) {
    proposals.removeIf(p -> p.id().equals(proposal));
  }
}
