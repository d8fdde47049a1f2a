package org.standproud.rules.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardTree.Mapping;
import org.standproud.rules.card.CardTree.Node;
import org.standproud.rules.card.CardTree.Text;
import org.standproud.rules.language.Nearest;

/** Parses {@link Levels}; never throws for the content of the file, but reports errors. */
public final class LevelsReader {

  private static final String SOURCE = "source";

  private final String file;
  private final List<CardError> errors = new ArrayList<>();

  private LevelsReader(String file) {
    this.file = file;
  }

  /**
   * The result of parsing a file.
   *
   * @param levels the levels, or null if there are errors
   * @param errors the errors
   */
  public record Outcome(@Nullable Levels levels, List<CardError> errors) {
    /** Copies the list. */
    public Outcome {
      errors = List.copyOf(errors);
    }
  }

  /**
   * Parses levels: one line a severity, and the source.
   *
   * @param file path of the file
   * @param yaml its text
   */
  public static Outcome read(String file, String yaml) {
    LevelsReader reader = new LevelsReader(file);
    try {
      Levels levels = reader.levels(CardTree.read(file, yaml));
      return new Outcome(reader.errors.isEmpty() ? levels : null, reader.errors);
    } catch (CardTree.Unreadable e) {
      return new Outcome(null, List.of(e.error()));
    }
  }

  private @Nullable Levels levels(Mapping root) {
    List<String> keys =
        new ArrayList<>(Arrays.stream(Severity.values()).map(Severity::words).toList());
    keys.add(SOURCE);
    for (Written key : root.keys().values()) {
      if (!keys.contains(key.text())) {
        error(
            key,
            "not a level; a line is one of: " + String.join(", ", keys),
            Nearest.of(key.text(), keys));
      }
    }
    Map<Severity, Double> shares = new EnumMap<>(Severity.class);
    for (Severity severity : Severity.values()) {
      Double share = share(root, severity.words());
      if (share != null) {
        shares.put(severity, share);
      }
    }
    Written source = text(root, SOURCE);
    inOrder(root, shares);
    return errors.isEmpty() ? new Levels(shares, source.text()) : null;
  }

  /** If a more severe finding needed more draws, easing a finding could make a card fire. */
  private void inOrder(Mapping root, Map<Severity, Double> shares) {
    Severity milder = null;
    for (Severity severity : Severity.values()) {
      Double share = shares.get(severity);
      Double before = milder == null ? null : shares.get(milder);
      if (milder != null && share != null && before != null && share > before) {
        error(
            text(root, severity.words()),
            "the level of a " + severity.words() + " is above that of a " + milder.words(),
            null);
      }
      milder = severity;
    }
  }

  private @Nullable Double share(Mapping root, String key) {
    Written written = text(root, key);
    if (written.text().isEmpty()) {
      return null;
    }
    Double share = Percent.share(written.text());
    if (share == null) {
      error(written, key + " is " + Percent.WANTED, null);
    }
    return share;
  }

  private Written text(Mapping root, String key) {
    Node node = root.entries().get(key);
    if (node instanceof Text text && !text.written().text().isBlank()) {
      return text.written();
    }
    Written at = node == null ? new Written("", 1, 1) : new Written("", node.line(), node.column());
    error(at, key + (node == null ? " is missing" : " is a text"), null);
    return new Written("", 1, 1);
  }

  private void error(Written at, String message, @Nullable String nearest) {
    errors.add(
        new CardError(file, at.line(), at.column(), at.text(), message, nearest, "stop: 5 %"));
  }
}
