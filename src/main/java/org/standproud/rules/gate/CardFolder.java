package org.standproud.rules.gate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.CardLimits;
import org.standproud.rules.card.Written;

/**
 * The card files of a folder: {@code *.yaml} or {@code *.yml} in subfolders named for what they
 * protect. Hidden files and links out of the folder are ignored.
 */
public final class CardFolder {

  private static final int DEPTH = 3;

  /**
   * No characters that could leave a folder, hide a file, or mean something else on another system.
   */
  private static final Pattern NAME =
      Pattern.compile(
          "(?:[A-Za-z0-9][A-Za-z0-9_-]{0,59}/){1,2}[A-Za-z0-9][A-Za-z0-9._-]{0,59}\\.ya?ml");

  private CardFolder() {}

  /**
   * The content of a folder.
   *
   * @param files the text of each file by its path
   * @param errors the unreadable files
   */
  public record Contents(Map<String, String> files, List<CardError> errors) {
    /** Copies the collections. */
    public Contents {
      files = Map.copyOf(files);
      errors = List.copyOf(errors);
    }
  }

  /**
   * Reads every card.
   *
   * @param folder the folder
   * @throws UncheckedIOException if it cannot be read
   */
  public static Contents read(Path folder) {
    Map<String, String> files = new TreeMap<>();
    List<CardError> errors = new ArrayList<>();
    try (Stream<Path> paths = Files.walk(folder, DEPTH)) {
      Path real = folder.toRealPath();
      List<Path> cards =
          paths.filter(p -> isCard(folder, p)).limit(CardLimits.MAX_CARDS + 1L).toList();
      if (cards.size() > CardLimits.MAX_CARDS) {
        errors.add(error("", "more than " + CardLimits.MAX_CARDS + " cards"));
        return new Contents(files, errors);
      }
      for (Path path : cards) {
        if (path.toRealPath().startsWith(real)) {
          read(folder, path, files, errors);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Contents(files, errors);
  }

  /**
   * The error in the path of a card, or null.
   *
   * @param file the path, as a name in the rule base; it is never opened
   */
  static @Nullable CardError misnamed(String file) {
    return NAME.matcher(file).matches() && !file.contains("..")
        ? null
        : new CardError(
            file.length() > 130 ? file.substring(0, 130) : file,
            1,
            1,
            "",
            "a card is named for what it protects and itself, in letters, digits and hyphens",
            null,
            "holding/HOLD-001.yaml");
  }

  private static boolean isCard(Path folder, Path path) {
    for (Path part : folder.relativize(path)) {
      if (part.toString().startsWith(".")) {
        return false;
      }
    }
    String name = path.toString();
    return Files.isRegularFile(path) && (name.endsWith(".yaml") || name.endsWith(".yml"));
  }

  private static void read(
      Path folder, Path path, Map<String, String> files, List<CardError> errors)
      throws IOException {
    String name = folder.relativize(path).toString().replace('\\', '/');
    if (Files.size(path) > 4L * CardLimits.MAX_CARD_LENGTH) {
      errors.add(error(name, "the file is too large"));
      return;
    }
    try {
      files.put(name, Files.readString(path));
    } catch (MalformedInputException e) {
      errors.add(error(name, "the file is not UTF-8 text"));
    }
  }

  private static CardError error(String file, String message) {
    return CardError.at(file, new Written("", 1, 1), message);
  }
}
