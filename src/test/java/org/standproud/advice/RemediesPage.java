package org.standproud.advice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.remedy.Remedy;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.workholding.OtherHold;
import org.standproud.advice.workholding.OtherHolds;
import org.standproud.setup.Setup;
import tools.jackson.databind.json.JsonMapper;

/**
 * The page that shows what is advised for each demonstration set-up, and why a shop would do it.
 */
final class RemediesPage {

  private static final String HEAD =
      """
      # What is advised

      Written by `RemediesPageTest` from the demonstration set-ups; after a change to cards, \
      mechanics or advice write it anew and read what changed:

          mvn -Pregenerate verify

      For each demonstration set-up: what stands against it, the first \
      remedy, what else takes a caution away in a few minutes, and the best other way to hold the \
      job. Every number was got by judging the changed set-up by the same cards. Worst means the \
      worst end of what is not known. Times to set up are common practice, no source.
      """;

  /** Why a toolmaker would do what is advised first; common practice, no source. */
  private static final Map<String, Why> WHY =
      Map.ofEntries(
          why(
              "01",
              List.of(),
              "It grips half of the plate, the wire takes up the face and a stop stands at "
                  + "each end: this is how it is done."),
          why(
              "02",
              List.of(),
              "A low block, pushed into the fixed jaw, on a screw without slack: there is "
                  + "nothing to gain."),
          why(
              "03",
              List.of("cutter moved across", "deeper grip"),
              "Lower parallels are the first thing a toolmaker reaches for; and with the "
                  + "plate under the rim of the cutter the teeth run along it and push less "
                  + "across its weak way."),
          why(
              "04",
              List.of("deeper grip", "a stop", "a backing"),
              "The end mill bites lengthwise and across, so a stop takes the one push and a"
                  + " block behind the plate the other; both cost minutes and no new cutter."),
          why(
              "05",
              List.of("less radial depth, more passes"),
              "What is left is a long thin cutter against the plate, and three light passes"
                  + " ease both; a shop without a shorter cutter does just that."),
          why(
              "06",
              List.of("climb and conventional exchanged"),
              "On a slack screw a shop cuts against the feed: the screw then pushes on one "
                  + "flank and nothing is there to be snatched."),
          why(
              "07",
              List.of("another cutter"),
              "Nothing is tried before the inserts: turned or changed, they cut where the "
                  + "worn ones rub."),
          why(
              "08",
              List.of("deeper grip"),
              "Ten minutes with thinner parallels shorten what stands and lengthen the hold"
                  + " at once, and the wire stays where it is."),
          why(
              "09",
              List.of("feed reversed", "gripped faces made flat", "deeper grip"),
              "Sawn faces are milled before anything else is squared to them; then it is "
                  + "set lower and the cut is fed so that it pushes into the fixed jaw."),
          why(
              "10",
              List.of("another cutter"),
              "An edge wider than the end mill leaves a step between two passes; a cutter "
                  + "that spans it leaves none."),
          why(
              "11",
              List.of("other jaws"),
              "No jaws make room under the spindle: a plate that does not go in upright is "
                  + "laid down."),
          why(
              "12",
              List.of("a backing"),
              "Where nothing was measured, a solid block behind the plate helps whatever "
                  + "the vise really gives; the measuring is still to be done."));

  /**
   * Why a shop would do it.
   *
   * @param kinds what was advised first when the sentence was written
   * @param sentence the reason
   */
  private record Why(List<String> kinds, String sentence) {}

  private static Map.Entry<String, Why> why(String name, List<String> kinds, String sentence) {
    return Map.entry(name, new Why(kinds, sentence));
  }

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
    Remedies remedies = DemoShop.remedies(name);
    OtherHolds holds =
        OtherHolds.of(setup, remedies.viseHolds(), DemoShop.CARDS, DemoShop.CATALOGUE);
    line("");
    line("## " + name.replaceFirst("\\.json$", ""));
    line("");
    line(note(name));
    line("");
    boolean stopped = judged.isStopped();
    Set<String> against = stopped ? judged.stops() : judged.cautions();
    line(
        "**"
            + remedies.verdict()
            + "**, score "
            + remedies.score()
            + (against.isEmpty() ? "." : stopped ? ". Stops:" : ". Cautions:"));
    line("");
    against.forEach(id -> line("* " + id + " " + title(id)));
    if (!against.isEmpty()) {
      line("");
    }
    line("Why a toolmaker would: " + reason(name, remedies));
    line("");
    if (!stopped) {
      remedies(remedies);
    } else if (holds.recommended()) {
      other(holds);
      remedies(remedies);
    } else {
      remedies(remedies);
      other(holds);
    }
  }

  /** The sentence for what is advised first; out of date where something else is advised now. */
  private static String reason(String name, Remedies remedies) {
    Why why = Objects.requireNonNull(WHY.get(name.substring(0, 2)), name);
    List<Remedy> shown = remedies.ways().isEmpty() ? remedies.nearest() : remedies.ways();
    List<String> kinds = shown.isEmpty() ? List.of() : shown.get(0).kinds();
    if (!kinds.equals(why.kinds())) {
      throw new IllegalStateException(
          "another first remedy for " + name + ", write its reason anew: " + kinds);
    }
    return why.sentence();
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
