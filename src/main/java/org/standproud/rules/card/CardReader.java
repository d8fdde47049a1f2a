package org.standproud.rules.card;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardTree.Mapping;
import org.standproud.rules.card.CardTree.Node;
import org.standproud.rules.card.CardTree.Sequence;
import org.standproud.rules.card.CardTree.Text;
import org.standproud.rules.language.Nearest;
import org.standproud.setup.Worded;

/** Parses one card; never throws for the content of the file, but reports errors. */
public final class CardReader {

  private static final String SPEAKS_ABOVE = "speaks above";
  private static final String SILENCED_BY = "silenced by";

  private static final List<String> KEYS =
      List.of(
          "id",
          "title",
          "severity",
          "confidence",
          "source",
          "since",
          "revised",
          "owner",
          "appliesTo",
          "limits",
          "when",
          "derives",
          "eases",
          "overrides",
          SPEAKS_ABOVE,
          SILENCED_BY,
          "message",
          "remedy",
          "why",
          "examples");

  /** A working example for each part of a card, shown where the part is wrong. */
  private static final Map<String, String> LINES =
      Map.ofEntries(
          Map.entry("id", "id: HOLD-001"),
          Map.entry("title", "title: A tall plate tips easily"),
          Map.entry("severity", "severity: caution"),
          Map.entry("confidence", "confidence: medium"),
          Map.entry("source", "source: {kind: shop, reference: \"tool room notes\"}"),
          Map.entry("kind", "kind: handbook"),
          Map.entry("reference", "reference: \"title and author\""),
          Map.entry("edition", "edition: \"3\""),
          Map.entry("page", "page: \"12\""),
          Map.entry("since", "since: 2026-11-25"),
          Map.entry("revised", "revised: 2026-11-25"),
          Map.entry("owner", "owner: tool room"),
          Map.entry("appliesTo", "appliesTo: {operation: top edge}"),
          Map.entry("limits", "limits: {deep grip: 12 mm}"),
          Map.entry("when", "when: [stick-out > 2 * grip depth]"),
          Map.entry("derives", "derives: tall plate"),
          Map.entry("eases", "eases: {card: HOLD-001, to: note, because: the cut is light}"),
          Map.entry("overrides", "overrides: {card: HOLD-001, to: stop, because: it tips}"),
          Map.entry(SPEAKS_ABOVE, "speaks above: 10 %"),
          Map.entry(SILENCED_BY, "silenced by: [HOLD-008]"),
          Map.entry("card", "card: HOLD-001"),
          Map.entry("to", "to: note"),
          Map.entry("because", "because: the cut is light"),
          Map.entry("message", "message: \"The grip is {grip depth}\""),
          Map.entry("remedy", "remedy: Grip deeper."),
          Map.entry("why", "why: The cut pushes at the top. The jaws answer below."),
          Map.entry("says", "says: a shallow grip"),
          Map.entry("expect", "expect: fail"),
          Map.entry("given", "given: {grip depth: 10 mm}"),
          Map.entry(
              "examples",
              "examples: [{says: shallow, expect: fail, given: {grip depth: 10 mm}},"
                  + " {says: deep, expect: pass, given: {grip depth: 30 mm}}]"));

  private static final Written NOWHERE = new Written("", 1, 1);

  private final String file;
  private final List<CardError> errors = new ArrayList<>();

  private CardReader(String file) {
    this.file = file;
  }

  /**
   * The result of parsing a file.
   *
   * @param card the card, or null if there are errors
   * @param errors the errors
   */
  public record Outcome(@Nullable Card card, List<CardError> errors) {
    /** Copies the list. */
    public Outcome {
      errors = List.copyOf(errors);
    }
  }

  /**
   * Parses a card.
   *
   * @param file path of the file; its folder names what the card protects
   * @param yaml the text of the file
   */
  public static Outcome read(String file, String yaml) {
    CardReader reader = new CardReader(file);
    try {
      Card card = reader.card(CardTree.read(file, yaml));
      return reader.errors.isEmpty()
          ? new Outcome(card, List.of())
          : new Outcome(
              null,
              reader.errors.subList(0, Math.min(reader.errors.size(), CardLimits.MAX_ERRORS)));
    } catch (CardTree.Unreadable e) {
      return new Outcome(null, List.of(e.error()));
    }
  }

  private Card card(Mapping root) {
    known(root, KEYS);
    boolean flags = !root.entries().containsKey("derives") && !changes(root);
    if (root.entries().containsKey("derives") && changes(root)) {
      error(root, "a card either derives a judgement or changes a finding", line("derives"));
    }
    Written derives = root.entries().containsKey("derives") ? name(root, "derives") : null;
    return new Card(
        file,
        id(root),
        title(root),
        protects(),
        flags || root.entries().containsKey("severity")
            ? word(root, "severity", Severity.class)
            : Severity.NOTE,
        word(root, "confidence", Confidence.class),
        source(root),
        day(root, "since", true),
        day(root, "revised", false),
        text(root, "owner", true).text(),
        appliesTo(root),
        limits(root),
        when(root),
        derives,
        change(root),
        speaksAbove(root, flags),
        silencedBy(root, flags),
        text(root, "message", flags),
        text(root, "remedy", flags).text(),
        text(root, "why", true).text(),
        examples(root));
  }

  private static boolean changes(Mapping root) {
    return root.entries().containsKey("eases") || root.entries().containsKey("overrides");
  }

  private Protects protects() {
    String[] parts = file.replace('\\', '/').split("/");
    String folder = parts.length < 2 ? "" : parts[parts.length - 2];
    for (Protects protects : Protects.values()) {
      if (protects.words().equals(folder)) {
        return protects;
      }
    }
    List<String> folders = Arrays.stream(Protects.values()).map(Protects::words).toList();
    errors.add(
        new CardError(
            file,
            1,
            1,
            folder,
            "the folder says what a card protects, and is one of: " + String.join(", ", folders),
            Nearest.of(folder, folders),
            "holding/HOLD-001.yaml"));
    return Protects.DATA;
  }

  private String title(Mapping root) {
    Written title = text(root, "title", true);
    String alike = MixedScripts.lookAlike(title.text());
    if (alike != null) {
      error(
          title,
          "\"" + alike + "\" mixes letters that look alike but are others",
          null,
          line("title"));
    }
    return title.text();
  }

  private Written id(Mapping root) {
    Written id = name(root, "id");
    if (!id.text().isEmpty() && !id.text().matches("[A-Za-z][A-Za-z0-9-]*")) {
      error(id, "an id is letters, digits and hyphens", null, "HOLD-001");
    }
    return id;
  }

  private Source source(Mapping root) {
    Mapping source = mapping(root, "source", true);
    known(source, List.of("kind", "reference", "edition", "page"));
    SourceKind kind = word(source, "kind", SourceKind.class);
    return new Source(
        kind,
        text(source, "reference", kind != SourceKind.COMMON_PRACTICE).text(),
        text(source, "edition", false).text(),
        text(source, "page", false).text());
  }

  private String day(Mapping root, String key, boolean required) {
    Written day = text(root, key, required);
    if (!day.text().isEmpty()) {
      try {
        LocalDate.parse(day.text());
      } catch (DateTimeParseException e) {
        error(day, key + " is a day", null, line(key));
      }
    }
    return day.text();
  }

  private Map<String, List<Written>> appliesTo(Mapping root) {
    Map<String, List<Written>> selectors = new LinkedHashMap<>();
    Node node = root.entries().get("appliesTo");
    List<Node> maps =
        node instanceof Sequence list ? list.items() : node == null ? List.of() : List.of(node);
    for (Node item : maps) {
      if (!(item instanceof Mapping map)) {
        error(item, "appliesTo names facts with their words", line("appliesTo"));
        continue;
      }
      for (Map.Entry<String, Node> entry : map.entries().entrySet()) {
        if (selectors.put(entry.getKey(), texts(entry.getValue())) != null) {
          error(entry.getValue(), entry.getKey() + " is written twice", null);
        }
      }
    }
    return selectors;
  }

  private List<Written> texts(Node node) {
    if (node instanceof Text text) {
      return List.of(text.written());
    }
    List<Written> texts = new ArrayList<>();
    if (node instanceof Sequence list) {
      for (Node item : list.items()) {
        if (item instanceof Text text) {
          texts.add(text.written());
        } else {
          error(item, "a text is expected here", null);
        }
      }
    }
    if (texts.isEmpty()) {
      error(node, "a text or a list of texts is expected here", null);
    }
    return texts;
  }

  private Map<String, Written> limits(Mapping root) {
    Map<String, Written> limits = new LinkedHashMap<>();
    Mapping map = mapping(root, "limits", false);
    if (map.entries().size() > CardLimits.MAX_LIMITS) {
      error(map, "more than " + CardLimits.MAX_LIMITS + " limits");
    }
    for (String name : map.entries().keySet()) {
      limits.put(name, name(map, name));
    }
    return limits;
  }

  private List<Written> when(Mapping root) {
    Node node = root.entries().get("when");
    if (node == null) {
      error(root, "when is missing", line("when"));
      return List.of();
    }
    List<Written> when = texts(node);
    if (when.size() > CardLimits.MAX_CONDITIONS) {
      error(node, "more than " + CardLimits.MAX_CONDITIONS + " conditions", null);
    }
    return when;
  }

  private @Nullable SeverityChange change(Mapping root) {
    if (!changes(root)) {
      return null;
    }
    if (root.entries().containsKey("eases") && root.entries().containsKey("overrides")) {
      error(root, "a card eases or overrides, not both", line("eases"));
    }
    boolean overrides = root.entries().containsKey("overrides");
    Mapping map = mapping(root, overrides ? "overrides" : "eases", true);
    known(map, List.of("card", "to", "because"));
    return new SeverityChange(
        overrides,
        name(map, "card"),
        word(map, "to", Severity.class),
        text(map, "because", true).text());
  }

  private @Nullable Double speaksAbove(Mapping root, boolean flags) {
    if (!root.entries().containsKey(SPEAKS_ABOVE)) {
      return null;
    }
    Written written = name(root, SPEAKS_ABOVE);
    Double share = Percent.share(written.text());
    if (share == null) {
      error(written, SPEAKS_ABOVE + " is " + Percent.WANTED, null, line(SPEAKS_ABOVE));
    } else if (!flags) {
      error(written, "only a card with a finding of its own speaks", null, null);
    }
    return share;
  }

  private List<Written> silencedBy(Mapping root, boolean flags) {
    Node node = root.entries().get(SILENCED_BY);
    if (node == null) {
      return List.of();
    }
    if (!flags) {
      error(node, "only a card with a finding of its own can be silenced", null);
    }
    return texts(node);
  }

  private List<Example> examples(Mapping root) {
    Node node = root.entries().get("examples");
    if (!(node instanceof Sequence list)) {
      error(
          node == null ? root : node,
          "examples is a list, at least one fail and one pass",
          line("examples"));
      return List.of();
    }
    if (list.items().size() > CardLimits.MAX_EXAMPLES) {
      error(list, "more than " + CardLimits.MAX_EXAMPLES + " examples", null);
    }
    List<Example> examples = new ArrayList<>();
    for (Node item : list.items()) {
      if (item instanceof Mapping map) {
        examples.add(example(map));
      } else {
        error(item, "an example is a map with says, expect and given", line("examples"));
      }
    }
    for (Expectation needed : List.of(Expectation.FAIL, Expectation.PASS)) {
      if (examples.stream().noneMatch(e -> e.expect() == needed)) {
        error(node, "no example expects " + needed.words(), line("examples"));
      }
    }
    return examples;
  }

  private Example example(Mapping map) {
    known(map, List.of("says", "expect", "base", "given"));
    Map<String, Written> given = new LinkedHashMap<>();
    Mapping values = mapping(map, "given", !map.entries().containsKey("base"));
    for (String fact : values.entries().keySet()) {
      given.put(fact, name(values, fact));
    }
    return new Example(
        text(map, "says", true),
        word(map, "expect", Expectation.class),
        map.entries().containsKey("base") ? name(map, "base") : null,
        given);
  }

  private void known(Mapping map, List<String> keys) {
    for (Written key : map.keys().values()) {
      if (!keys.contains(key.text())) {
        error(
            key,
            "not a part of a card here; the parts are: " + String.join(", ", keys),
            Nearest.of(key.text(), keys),
            line(String.valueOf(Nearest.of(key.text(), keys))));
      }
    }
  }

  private Mapping mapping(Mapping parent, String key, boolean required) {
    Node node = parent.entries().get(key);
    if (node instanceof Mapping mapping) {
      return mapping;
    }
    if (node != null) {
      error(node, key + " is a map", line(key));
    } else if (required) {
      error(parent, key + " is missing", line(key));
    }
    return new Mapping(Map.of(), Map.of(), 0, 0);
  }

  private Written text(Mapping parent, String key, boolean required) {
    Node node = parent.entries().get(key);
    if (node instanceof Text text) {
      if (required && text.written().text().isBlank()) {
        error(text.written(), key + " is empty", null, line(key));
      }
      return text.written();
    }
    if (node != null) {
      error(node, key + " is a text", line(key));
    } else if (required && parent.line() > 0) { // a missing map is reported once, not part by part
      error(parent, key + " is missing", line(key));
    }
    return NOWHERE;
  }

  private Written name(Mapping parent, String key) {
    Written name = text(parent, key, true);
    if (name.text().length() > CardLimits.MAX_NAME_LENGTH) {
      error(
          new Written("", name.line(), name.column()),
          key + " is longer than " + CardLimits.MAX_NAME_LENGTH + " characters",
          null,
          null);
    }
    return name;
  }

  private <E extends Enum<E> & Worded> E word(Mapping parent, String key, Class<E> type) {
    E[] all = type.getEnumConstants();
    Written written = text(parent, key, true);
    List<String> words = Arrays.stream(all).map(Worded::words).toList();
    int index = words.indexOf(written.text());
    if (index < 0 && !written.text().isEmpty()) {
      error(
          written,
          key + " is one of: " + String.join(", ", words),
          Nearest.of(written.text(), words),
          line(key));
    }
    return all[Math.max(0, index)];
  }

  private static @Nullable String line(String key) {
    return LINES.get(key);
  }

  private void error(Mapping at, String message) {
    error(at, message, null);
  }

  private void error(Node at, String message, @Nullable String example) {
    errors.add(new CardError(file, at.line(), at.column(), "", message, null, example));
  }

  private void error(
      Written at, String message, @Nullable String nearest, @Nullable String example) {
    errors.add(new CardError(file, at.line(), at.column(), at.text(), message, nearest, example));
  }
}
