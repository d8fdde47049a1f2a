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
 * A change of some cards, applied to the others.
 *
 * @param written the text of each new or changed file, by path
 * @param removed the paths of the files to delete
 * @param onto the revision it is based on, or null for the latest
 */
public record CardEdit(Map<String, String> written, Set<String> removed, @Nullable String onto) {

  /** Copies the collections. */
  public CardEdit {
    written = Collections.unmodifiableMap(new TreeMap<>(written));
    removed = Collections.unmodifiableSet(new TreeSet<>(removed));
  }

  /**
   * A change that writes cards.
   *
   * @param files the text of each new or changed file, by path
   */
  public static CardEdit of(Map<String, String> files) {
    return new CardEdit(files, Set.of(), null);
  }

  /**
   * The change between two sets of files.
   *
   * @param before the text of each file by its path
   * @param after the same afterwards
   */
  public static CardEdit between(Map<String, String> before, Map<String, String> after) {
    Map<String, String> written = new HashMap<>(after);
    written.entrySet().removeAll(before.entrySet());
    Set<String> removed = new HashSet<>(before.keySet());
    removed.removeAll(after.keySet());
    return new CardEdit(written, removed, null);
  }

  /** Applies the change to files. */
  public Map<String, String> onto(Map<String, String> files) {
    Map<String, String> all = new TreeMap<>(files);
    all.keySet().removeAll(removed);
    all.putAll(written);
    return all;
  }

  /** Whether it is based on an older revision than the latest. */
  boolean isStale(Optional<StoredRevision> latest) {
    return onto != null && !onto.equals(latest.map(StoredRevision::id).orElse(""));
  }
}
