package org.standproud.mechanics.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The javadoc of a class of the mechanics as Markdown, so that no formula is written twice. */
final class ClassText {

  private static final Path ROOT = Path.of("src/main/java/org/standproud/mechanics");
  private static final Pattern OF_CLASS =
      Pattern.compile(
          "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:public |final |sealed )*(?:class|record|enum|interface) ",
          Pattern.DOTALL);

  private ClassText() {}

  /**
   * The text of a class.
   *
   * @param name package and simple name, such as {@code engagement.Arc}
   */
  static String of(String name) {
    Path file = ROOT.resolve(name.replace('.', '/') + ".java");
    try {
      Matcher matcher = OF_CLASS.matcher(Files.readString(file));
      if (!matcher.find()) {
        throw new IllegalStateException("no class javadoc in " + file);
      }
      return markdown(matcher.group(1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String markdown(String javadoc) {
    String lines = javadoc.replaceAll("(?m)^ *\\* ?", "").strip();
    int firstParam = lines.indexOf("@param");
    String prose = firstParam < 0 ? lines : lines.substring(0, firstParam).strip();
    String symbols =
        firstParam < 0
            ? ""
            : "\n\n"
                + lines
                    .substring(firstParam)
                    .replaceAll("(?m)^ +", "")
                    .replaceAll("\\s*\\n(?!@)", " ")
                    .replaceAll("(?m)^@param (\\w+) ", "- `$1`: ");
    String text = prose + symbols;
    text = text.replaceAll("\\{@(?:code|link)\\s+([^}]+)}", "`$1`").replaceAll("`#", "`");
    text = text.replaceAll("</?ul>\\n?", "").replaceAll("(?m)^ *<li>", "- ");
    text = text.replaceAll("<p>", "").replaceAll("</?pre>", "```");
    return text.replace("&lt;", "<").replace("&gt;", ">").replaceAll("(?m) +$", "");
  }
}
