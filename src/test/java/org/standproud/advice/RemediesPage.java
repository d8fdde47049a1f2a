package org.standproud.advice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.remedy.Remedy;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.workholding.OtherHold;
import org.standproud.advice.workholding.OtherHolds;
import org.standproud.setup.Setup;
import tools.jackson.databind.json.JsonMapper;

/** The page that shows what is advised for each demonstration set-up that must not run. */
final class RemediesPage {

  private static final String HEAD =
      """
      # What is advised

      Written by `RemediesPageTest` from the demonstration set-ups; after a change to cards, \
      mechanics or advice write it anew and read what changed:

          mvn -Pregenerate verify

      For each demonstration set-up that is not to be run: what stands against it, the first \
      remedy, what else takes a caution away in a few minutes, and the best other way to hold the \
      job. Every number was got by judging the changed set-up by the same cards. Worst means the \
      worst end of what is not known. Times to set up are common practice, no source.
      """;

  private final StringBuilder page = new StringBuilder(HEAD);

  private RemediesPage() {}

  static String written() throws IOException {
    RemediesPage page = new RemediesPage();
    for (String name : DemoShop.names()) {
      page.add(name);
    }
    return page.page.toString();
  }

  private void add(String name) throws IOException {
    Setup setup = DemoShop.setup(name);
    Judged judged = DemoShop.trials().of(setup);
    if (!judged.isStopped()) {
      return;
    }
    Remedies remedies = DemoShop.remedies(name);
    OtherHolds holds =
        OtherHolds.of(setup, remedies.viseHolds(), DemoShop.CARDS, DemoShop.CATALOGUE);
    line("");
    line("## " + name.replaceFirst("\\.json$", ""));
    line("");
    line(note(name));
    line("");
    line("**" + remedies.verdict() + "**, score " + remedies.score() + ". Stops:");
    line("");
    judged.stops().forEach(id -> line("* " + id + " " + title(id)));
    line("");
    if (holds.recommended()) {
      other(holds);
      remedies(remedies);
    } else {
      remedies(remedies);
      other(holds);
    }
  }

  private static String note(String name) throws IOException {
    return JsonMapper.shared()
        .readTree(Files.readString(Path.of("seeds/setups", name)))
        .get("note")
        .stringValue();
  }

  private static String title(String id) {
    return DemoShop.CARDS.card(id).card().title();
  }

  private void remedies(Remedies remedies) {
    line("### In the vise");
    line("");
    line(remedies.conclusion());
    line("");
    List<Remedy> shown = remedies.ways().isEmpty() ? remedies.nearest() : remedies.ways();
    shown.stream().limit(1).forEach(this::remedy);
    if (!remedies.alsoWorthDoing().isEmpty()) {
      line("Also worth doing:");
      line("");
      remedies.alsoWorthDoing().forEach(more -> line("* " + more.argument() + added(more)));
      line("");
    }
  }

  private void remedy(Remedy remedy) {
    line("> " + remedy.argument());
    line("");
    line(
        "| verdict | score | stops left | passes | min to cut, before | after | min to set up |"
            + " min added |");
    line("|---|---|---|---|---|---|---|---|");
    line(
        "| "
            + String.join(
                " | ",
                remedy.verdict().words(),
                String.valueOf(remedy.score()),
                remedy.stopsLeft().isEmpty() ? "none" : String.join(", ", remedy.stopsLeft()),
                String.valueOf(remedy.cost().passes()),
                minutes(remedy.cost().cutBefore()),
                minutes(remedy.cost().cutAfter()),
                minutes(remedy.cost().setUpLeast())
                    + " to "
                    + minutes(remedy.cost().setUpGreatest()),
                minutes(remedy.cost().added()))
            + " |");
    line("");
    if (!remedy.needs().isEmpty()) {
      line("Needs: " + String.join("; ", remedy.needs()) + ".");
      line("");
    }
  }

  private static String added(Remedy more) {
    return " Clears "
        + String.join(", ", more.clears())
        + "; "
        + minutes(more.cost().added())
        + " min.";
  }

  private void other(OtherHolds holds) {
    OtherHold best = holds.holds().get(0);
    line("### Held another way");
    line("");
    line(holds.conclusion());
    line("");
    line("> " + best.argument());
    line("");
    line("| verdict | score | passes | min to cut | min to set up | holding margin |");
    line("|---|---|---|---|---|---|");
    line(
        "| "
            + String.join(
                " | ",
                String.valueOf(best.verdict()),
                String.valueOf(best.score()),
                String.valueOf(best.passes()),
                minutes(best.cutMinutes()),
                minutes(best.setUpLeast()) + " to " + minutes(best.setUpGreatest()),
                margin(best.margins()))
            + " |");
    line("");
    line("Needs: " + String.join("; ", best.items()) + ".");
    line("");
    if (!best.open().isEmpty()) {
      line(
          "Cannot be judged in that hold: "
              + best.open().stream()
                  .map(open -> open.card() + " " + open.title())
                  .collect(Collectors.joining("; "))
              + ".");
      line("");
    }
  }

  private static String margin(List<Quantity> margins) {
    return margins.isEmpty()
        ? ""
        : String.format(
            Locale.ROOT,
            "%.3g at worst, likely %.3g",
            margins.get(4).low(),
            margins.get(4).value());
  }

  private static String minutes(double minutes) {
    return String.format(Locale.ROOT, "%.1f", minutes);
  }

  private void line(String text) {
    page.append(text).append('\n');
  }
}
