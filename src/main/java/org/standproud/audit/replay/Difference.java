package org.standproud.audit.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;

/**
 * One difference between recorded and replayed parts.
 *
 * @param part the part of the record
 * @param pointer the place in it (RFC 6901)
 * @param recorded the recorded value, as JSON text; absent if there is none
 * @param now the value now, as JSON text; absent if there is none
 */
public record Difference(
    String part, String pointer, @Nullable String recorded, @Nullable String now) {

  /** Most differences listed for one part; the first ones are enough. */
  static final int MOST = 50;

  static List<Difference> between(String part, CanonicalJson recorded, CanonicalJson now) {
    List<Difference> found = new ArrayList<>();
    if (!recorded.equals(now)) {
      walk(part, "", recorded.tree(), now.tree(), found);
    }
    return found;
  }

  private static void walk(
      String part,
      String pointer,
      @Nullable JsonNode was,
      @Nullable JsonNode is,
      List<Difference> found) {
    if (found.size() >= MOST || was != null && was.equals(is)) {
      return;
    }
    if (was != null && is != null && was.isObject() && is.isObject()) {
      TreeSet<String> names = new TreeSet<>(was.propertyNames());
      names.addAll(is.propertyNames());
      for (String name : names) {
        String step = name.replace("~", "~0").replace("/", "~1");
        walk(part, pointer + "/" + step, was.get(name), is.get(name), found);
      }
    } else if (was != null && is != null && was.isArray() && is.isArray()) {
      for (int i = 0; i < Math.max(was.size(), is.size()); i++) {
        walk(part, pointer + "/" + i, was.get(i), is.get(i), found);
      }
    } else {
      found.add(new Difference(part, pointer, text(was), text(is)));
    }
  }

  private static @Nullable String text(@Nullable JsonNode node) {
    return node == null ? null : CanonicalJson.of(node).text();
  }
}
