package org.standproud.web.cards;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.CardError;

/**
 * An error in a card with its line.
 *
 * @param error the error
 * @param here whether it is in the edited card, and not in another that the change breaks
 * @param before the line up to the error; empty if the line is not known
 * @param wrong the wrong text
 * @param after the rest of the line
 */
public record ErrorPlace(CardError error, boolean here, String before, String wrong, String after) {

  /** Its position in words. */
  public String place() {
    String where = "line " + error.line() + ", column " + error.column();
    return here ? where : error.file() + ", " + where;
  }

  /** The error located in the typed text. */
  static ErrorPlace of(CardError error, CardDraft draft) {
    boolean here = error.file().equals(draft.file());
    String line = here ? line(draft.text(), error.line()) : null;
    if (line == null) {
      return new ErrorPlace(error, here, "", error.fragment(), "");
    }
    int from = Math.min(Math.max(error.column() - 1, 0), line.length());
    boolean found = !error.fragment().isEmpty() && line.startsWith(error.fragment(), from);
    int to = found ? from + error.fragment().length() : Math.min(from + 1, line.length());
    return new ErrorPlace(
        error, here, line.substring(0, from), line.substring(from, to), line.substring(to));
  }

  private static @Nullable String line(String text, int number) {
    List<String> lines = text.lines().toList();
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : null;
  }
}
