package org.standproud.mechanics.published;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The text of {@code api-docs/mechanics.md}, from what the tests gave. */
final class MechanicsPage {

  private final List<Figure> figures;
  private final List<KnownLimit> limits;

  MechanicsPage(List<Figure> figures, List<KnownLimit> limits) {
    this.figures = figures;
    this.limits = limits;
  }

  /** File name of the picture of a subject. */
  static String picture(Subject subject) {
    return subject.name().toLowerCase(Locale.ROOT) + ".svg";
  }

  /** How many published rows there are. */
  int rows() {
    return rows(SourceTag.values());
  }

  private int rows(SourceTag... tags) {
    Set<String> rows = new LinkedHashSet<>();
    for (Figure figure : figures) {
      if (List.of(tags).contains(figure.table().tag())) {
        rows.add(figure.table() + "|" + figure.row());
      }
    }
    return rows.size();
  }

  String text() {
    StringBuilder page = new StringBuilder(OPENING);
    page.append("\n| tag | meaning | rows | figures |\n|---|---|---:|---:|\n");
    for (SourceTag tag : SourceTag.values()) {
      long count = figures.stream().filter(f -> f.table().tag() == tag).count();
      page.append(
          String.format("| %s | %s | %d | %d |%n", tag.word(), tag.meaning(), rows(tag), count));
    }
    page.append(String.format("| all | | %d | %d |%n", rows(), figures.size()));
    page.append("\n| kind | rows | figures |\n|---|---:|---:|\n");
    for (ResultKind kind : ResultKind.values()) {
      List<Figure> here = figures.stream().filter(f -> f.table().kind() == kind).toList();
      long cases = here.stream().map(f -> f.table() + "|" + f.row()).distinct().count();
      page.append(String.format("| %s | %d | %d |%n", kind.meaning(), cases, here.size()));
    }
    for (Subject subject : Subject.values()) {
      section(subject, page);
    }
    return page.toString();
  }

  private static final String OPENING =
      """
      # The mechanics, and what it was checked against

      This page is made by the tests: the text of each formula is the javadoc of the class that
      computes it, each table is what the tests compared, each picture is drawn with figures of the
      package. A test fails if the page differs from what the tests make. To make it anew:

          mvn -Pregenerate verify

      SI units inside; the tables show the units of print. Frames and signs: x along the jaws, y
      across the stock and positive toward the fixed jaw, z up; forces are forces on the work unless
      a table says otherwise.
      """;

  private void section(Subject subject, StringBuilder page) {
    page.append("\n## ").append(subject.title()).append("\n\n");
    page.append("![").append(Pictures.caption(subject)).append("](mechanics/");
    page.append(picture(subject)).append(")\n\n*").append(Pictures.caption(subject)).append("*\n");
    for (String name : subject.classes()) {
      page.append("\n### `").append(name).append("`\n\n").append(ClassText.of(name)).append('\n');
    }
    Map<PublishedTable, List<Figure>> tables = new LinkedHashMap<>();
    for (Figure figure : figures) {
      if (figure.table().subject() == subject) {
        tables.computeIfAbsent(figure.table(), t -> new ArrayList<>()).add(figure);
      }
    }
    tables.forEach((table, rows) -> table(table, rows, page));
    limits(subject, page);
  }

  private static void table(PublishedTable table, List<Figure> rows, StringBuilder page) {
    page.append("\n**").append(table.source()).append("** [").append(table.tag().word());
    page.append("; ").append(table.kind().meaning());
    page.append(
        "]\n\n| case | quantity | unit | published | computed | difference | tolerance |\n");
    page.append("|---|---|---|---:|---:|---:|---:|\n");
    for (Figure figure : rows) {
      page.append(
          String.format(
              "| %s | %s | %s | %s | %s | %s | %s |%n",
              figure.row(),
              figure.quantity(),
              figure.unit(),
              digits(figure.published(), 6),
              digits(figure.computed(), 6),
              difference(figure),
              digits(figure.tolerance(), 2)));
    }
  }

  private static String difference(Figure figure) {
    boolean none =
        Math.abs(figure.difference()) < 1e-9 * Math.max(1e-300, Math.abs(figure.published()));
    return none ? "0" : digits(figure.difference(), 2);
  }

  private static String digits(double value, int significant) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(significant));
    if (rounded.signum() == 0) {
      return "0";
    }
    double size = Math.abs(value);
    BigDecimal bare = rounded.stripTrailingZeros();
    return size < 1e-4 || size >= 1e7 ? bare.toString() : bare.toPlainString();
  }

  private void limits(Subject subject, StringBuilder page) {
    List<KnownLimit> here = limits.stream().filter(l -> l.subject() == subject).toList();
    if (!here.isEmpty()) {
      page.append("\n**Known limits**\n\n");
      here.forEach(
          l -> page.append("- ").append(l.beyond()).append(": ").append(l.then()).append(".\n"));
    }
  }
}
