package org.standproud.advice.everyday;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Verdict;
import org.standproud.rules.engine.CompiledCard;

/** The page that sets the answers of the service beside those of a machinist. */
final class EverydayPage {

  /** A caution that speaks on a larger share of everyday set-ups is no longer heard. */
  static final double MOST_OFTEN = 0.35;

  private static final String HEAD =
      """
      # Everyday set-ups

      Written by `EverydaySetupsTest` from `src/test/resources/everyday/set-ups.csv`; after a \
      change to cards, mechanics or advice write it anew and read what changed:

          mvn -Pregenerate verify

      Each row of that table is a set-up as it comes up in a shop, with the verdict that a good \
      machinist would give and why: common practice, no source. A *miss* is a bad set-up that the \
      service lets run; a *false alarm* is a sound one that it does not let run, because of a stop \
      or because it cannot be judged.
      """;

  private final StringBuilder page = new StringBuilder(HEAD);
  private final EverydayReport report;

  private EverydayPage(EverydayReport report) {
    this.report = report;
  }

  static String written(EverydayReport report, int mostFalseAlarms) {
    EverydayPage page = new EverydayPage(report);
    page.counts(mostFalseAlarms);
    page.confusion();
    page.widths();
    page.list("Misses", report.missed());
    page.list("False alarms", report.falseAlarms());
    page.cards();
    return page.page.toString();
  }

  private void counts(int mostFalseAlarms) {
    int all = report.checked().size();
    int sound = report.sound().size();
    int alarms = report.falseAlarms().size();
    long crowded = report.checked().stream().filter(CheckedSetup::crowded).count();
    line("");
    line("| | count | share |");
    line("|---|---|---|");
    row("set-ups", all, "");
    row("sound", sound, "");
    row("bad", all - sound, "");
    row("misses", report.missed().size(), percent(report.missed().size(), all - sound));
    row("false alarms", alarms, percent(alarms, sound));
    row("most false alarms that the build allows today", mostFalseAlarms, "");
    row(
        "sound, let run, with more than " + CheckedSetup.MOST_CAUTIONS + " cautions",
        crowded,
        percent(crowded, sound - alarms));
  }

  private void row(String name, long count, String share) {
    line("| " + name + " | " + count + " | " + share + " |");
  }

  private void confusion() {
    line("");
    line("## Machinist and service");
    line("");
    StringBuilder head = new StringBuilder("| a machinist says |");
    StringBuilder rule = new StringBuilder("|---|");
    for (Verdict verdict : Verdict.values()) {
      head.append(" service: ").append(verdict.words()).append(" |");
      rule.append("---|");
    }
    line(head.toString());
    line(rule.toString());
    for (MachinistVerdict machinist : MachinistVerdict.values()) {
      Map<Verdict, Long> answers = report.answers(machinist);
      StringBuilder row = new StringBuilder("| ").append(machinist.words()).append(" |");
      for (Verdict verdict : Verdict.values()) {
        row.append(' ').append(answers.getOrDefault(verdict, 0L)).append(" |");
      }
      line(row.toString());
    }
  }

  private void widths() {
    line("");
    line("## How wide the answers are");
    line("");
    line("Median over all rows of the high end of a fact over its low end.");
    line("");
    line("| fact | median ratio | aimed at |");
    line("|---|---|---|");
    EverydayReport.WIDTH_AIMED_AT.forEach(
        (fact, aim) ->
            line(
                "| "
                    + fact.name()
                    + " | "
                    + ratio(report.medianWidth(fact))
                    + " | under "
                    + ratio(aim)
                    + " |"));
  }

  private void list(String title, List<CheckedSetup> setups) {
    line("");
    line("## " + title);
    line("");
    if (setups.isEmpty()) {
      line("None.");
      return;
    }
    line("| row | set-up | a machinist: why | service | stops |");
    line("|---|---|---|---|---|");
    for (CheckedSetup one : setups) {
      line(
          "| "
              + String.join(
                  " | ",
                  one.row().id(),
                  one.row().inShort(),
                  one.row().machinist().words() + ": " + one.row().why(),
                  one.verdict().words(),
                  String.join(", ", one.stops()))
              + " |");
    }
  }

  private void cards() {
    CardCounts counts = report.cards();
    int all = counts.setups();
    line("");
    line("## How often each card speaks");
    line("");
    line(
        "Over "
            + all
            + " set-ups drawn at random as an ordinary week brings them (`EverydayShop`: ordinary"
            + " stock, the vise that is there, speeds near those of the tables, things left"
            + " unsaid). A card speaks if it fails or is open; alone means that no other stop or"
            + " caution speaks. **Too often** marks a caution that speaks on more than "
            + percent(MOST_OFTEN, 1)
            + ".");
    line("");
    line("| card | claim | speaks | as a stop | as a caution | alone | always with | |");
    line("|---|---|---|---|---|---|---|---|");
    counts.byCard().entrySet().stream()
        .sorted((a, b) -> Integer.compare(b.getValue().speaks(), a.getValue().speaks()))
        .forEach(entry -> card(entry.getKey(), entry.getValue(), all));
    line("");
    line("Never: " + silent(counts) + ".");
  }

  private void card(String id, CardCounts.Count count, int all) {
    boolean often = count.caution() > MOST_OFTEN * all;
    List<String> always = List.copyOf(count.always());
    String with =
        always.size() > 4
            ? String.join(", ", always.subList(0, 4)) + " and " + (always.size() - 4) + " more"
            : String.join(", ", always);
    line(
        "| "
            + String.join(
                " | ",
                id,
                DemoShop.CARDS.card(id).card().title(),
                percent(count.speaks(), all),
                percent(count.stop(), all),
                percent(count.caution(), all),
                percent(count.alone(), all),
                with,
                often ? "**too often**" : "")
            + " |");
  }

  private static String silent(CardCounts counts) {
    return DemoShop.CARDS.cards().stream()
        .map(CompiledCard::id)
        .filter(id -> !counts.byCard().containsKey(id))
        .sorted()
        .reduce((a, b) -> a + ", " + b)
        .orElse("none");
  }

  private static String percent(double part, double whole) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * part / whole);
  }

  private static String ratio(double ratio) {
    return Double.isInfinite(ratio) ? "without end" : String.format(Locale.ROOT, "%.2g", ratio);
  }

  private void line(String text) {
    page.append(text).append('\n');
  }
}
