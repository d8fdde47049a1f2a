package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.node.ObjectNode;

/**
 * Items of one shelf as a shop speaks of them: "mild steel", "6 inch vise", "1/2 inch end mill,
 * HSS". None of them need be in the catalogue; one that is there comes first. What was not given is
 * a typical band with its source, or a typical value where the model takes no band.
 *
 * @param <P> the record of an item
 * @param kind what stands on the shelf
 * @param lookup gives the description of an item in metric units for tidy words, or null
 * @param words words that are understood, for messages
 */
record SpokenItems<P>(
    CatalogueSection<P> kind, Function<String, @Nullable ObjectNode> lookup, List<String> words) {

  /** What the name of such an item ends with, so that a record shows where its values are from. */
  static final String TYPICAL = " (typical)";

  private static final int LONGEST_NAME = 80;

  /** Copies the list. */
  SpokenItems {
    words = List.copyOf(words);
  }

  /**
   * The item of some words.
   *
   * @param text the text in the request
   * @return null if the words are not understood
   */
  @Nullable P item(String text) {
    if (text.length() > LONGEST_NAME) {
      return null;
    }
    ObjectNode found = lookup.apply(SpokenText.tidy(text));
    if (found == null) {
      return null;
    }
    ObjectNode described = found.deepCopy();
    String bare = SpokenText.withoutEnding(text, TYPICAL).strip();
    String name = bare.length() + TYPICAL.length() > LONGEST_NAME ? SpokenText.tidy(bare) : bare;
    described.put(kind.name().name(), name + TYPICAL);
    described.put(CatalogueShelf.UNITS, UnitSystem.METRIC.words());
    return kind.read(described);
  }

  /** The names nearest to what was written, of the catalogue and of those understood. */
  List<String> nearest(String written, Collection<String> catalogue) {
    List<String> names = new ArrayList<>(catalogue);
    names.addAll(words);
    return SpokenText.nearest(written, names);
  }

  /** Items by plain words. */
  static Function<String, @Nullable ObjectNode> among(Map<String, ObjectNode> byWord) {
    return byWord::get;
  }
}
