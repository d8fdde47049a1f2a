package org.standproud.web.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;

/**
 * The fields of a request as a tree.
 *
 * @param entry the field
 * @param inside the fields inside it, in order
 */
record Guide(FieldGuide.Entry entry, List<Guide> inside) {

  /** The fields of a whole request, without remarks, which are for API clients. */
  static List<Guide> of(UnitSystem units) {
    Map<String, Guide> byPath = new LinkedHashMap<>();
    List<Guide> top = new ArrayList<>();
    for (FieldGuide.Entry entry : FieldGuide.entries(units)) {
      Guide guide = new Guide(entry, new ArrayList<>());
      byPath.put(entry.path(), guide);
      String path = entry.path().substring(0, entry.path().lastIndexOf('/'));
      String above = path.endsWith("/*") ? path.substring(0, path.length() - 2) : path;
      Guide owner = byPath.get(above);
      if (owner == null) {
        top.add(guide);
      } else {
        owner.inside().add(guide);
      }
    }
    return top.stream().filter(g -> !g.name().equals("note")).toList();
  }

  /** Fields with all fields inside them. */
  static List<Guide> flat(List<Guide> guides) {
    return guides.stream()
        .flatMap(g -> Stream.concat(Stream.of(g), flat(g.inside()).stream()))
        .toList();
  }

  /** The step at which it or something inside it is asked first; null if all of it can wait. */
  FieldGuide.@Nullable Step step() {
    return flat(List.of(this)).stream()
        .map(g -> g.entry().first())
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** Its name in the request. */
  String name() {
    return entry.path().substring(entry.path().lastIndexOf('/') + 1);
  }

  FieldGuide.Sort sort() {
    return entry.sort();
  }

  /** Its name as words: gripDepth is grip depth. */
  String label() {
    StringBuilder words = new StringBuilder();
    for (char c : name().toCharArray()) {
      if (Character.isUpperCase(c)) {
        words.append(' ').append(Character.toLowerCase(c));
      } else {
        words.append(c);
      }
    }
    return words.toString();
  }
}
