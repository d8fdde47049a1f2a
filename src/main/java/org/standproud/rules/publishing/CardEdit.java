package org.standproud.rules.publishing;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A change of some cards, to be laid over all the others.
 *
 * @param written the text of each file that is new or different, by its path
 * @param removed the paths of the files that go
 * @param onto the revision it was written against, or null for whichever is the latest
 */
public record CardEdit(Map<String, String> written, Set<String> removed, @Nullable String onto) {

  /** Copies the collections. */
  public CardEdit {
    written = Collections.unmodifiableMap(new TreeMap<>(written));
    removed = Collections.unmodifiableSet(new TreeSet<>(removed));
  }

  /**
   * Cards written.
   *
   * @param files the text of each file that is new or different, by its path
   */
  public static CardEdit of(Map<String, String> files) {
    return new CardEdit(files, Set.of(), null);
  }

  /**
   * What leads from some files to others.
   *
   * @param before the text of each file by its path
   * @param after the same as it is to be
   */
  public static CardEdit between(Map<String, String> before, Map<String, String> after) {
    Map<String, String> written = new HashMap<>(after);
    written.entrySet().removeAll(before.entrySet());
    Set<String> removed = new HashSet<>(before.keySet());
    removed.removeAll(after.keySet());
    return new CardEdit(written, removed, null);
  }

  /** The files with this change laid over them. */
  public Map<String, String> onto(Map<String, String> files) {
    Map<String, String> all = new TreeMap<>(files);
    all.keySet().removeAll(removed);
    all.putAll(written);
    return all;
  }

  /** Whether it was written against an older revision than the latest. */
  boolean isStale(Optional<StoredRevision> latest) {
    return onto != null && !onto.equals(latest.map(StoredRevision::id).orElse(""));
  }
}
