package org.standproud.web.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.job.FirstCentimetre;
import org.standproud.advice.job.JobPlan;
import org.standproud.advice.job.RoutePass;
import org.standproud.advice.job.RouteSetUp;
import org.standproud.advice.job.ToleranceCheck;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Setup;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.recorded.FindingView;
import org.standproud.web.words.PageWords;

/**
 * A route as the page shows it.
 *
 * @param mark the sign of its verdict
 * @param verdict its verdict
 * @param time its time in words
 * @param chance chance of its worst pass, of 100; null if not known
 * @param cards the set-ups
 * @param tolerances what the finishing passes leave
 */
record RouteCard(
    String mark,
    String verdict,
    String time,
    @Nullable String chance,
    List<Card> cards,
    List<String> tolerances) {

  RouteCard {
    cards = List.copyOf(cards);
    tolerances = List.copyOf(tolerances);
  }

  /**
   * One set-up.
   *
   * @param setUp the set-up
   * @param mark the sign of its verdict
   * @param grip grip and stick-out in words
   * @param time its time in words
   * @param drawing its hold, an SVG element
   * @param rows its passes
   * @param found the first findings, each with the numbers of its passes
   * @param riskiest whether the riskiest pass of the job is among its passes
   * @param first the go-ahead for the first centimetre of its riskiest pass
   * @param of the number of that pass
   */
  record Card(
      RouteSetUp setUp,
      String mark,
      String grip,
      String time,
      String drawing,
      List<Row> rows,
      List<String> found,
      boolean riskiest,
      FirstCentimetre first,
      int of) {

    Card {
      rows = List.copyOf(rows);
      found = List.copyOf(found);
    }
  }

  /**
   * One pass.
   *
   * @param pass the pass
   * @param name rough or finish, and which part
   * @param mark the sign of its verdict
   * @param takes what it takes off
   * @param leaves the size it leaves
   * @param speed spindle speed
   * @param feed table feed with feed per tooth
   * @param way which way the cutter travels, climb or conventional
   * @param offset place of the cutter axis
   * @param chance chance that it holds, of 100; null if not known
   */
  record Row(
      RoutePass pass,
      String name,
      String mark,
      String takes,
      String leaves,
      String speed,
      String feed,
      String way,
      String offset,
      @Nullable String chance) {}

  static RouteCard of(JobPlan plan, PageWords words) {
    return new RouteCard(
        mark(plan.verdict().words()),
        plan.verdict().words(),
        minutes(plan.minutes().low())
            + " to "
            + minutes(plan.minutes().high())
            + " min, likely "
            + minutes(plan.minutes().likely()),
        hundred(plan.chance()),
        plan.setUps().stream().map(setUp -> card(setUp, plan, words)).toList(),
        plan.tolerances().stream().map(RouteCard::tolerance).toList());
  }

  private static Card card(RouteSetUp setUp, JobPlan plan, PageWords words) {
    Setup held = setUp.passes().get(0).held();
    RoutePass riskiest =
        setUp.passes().stream()
            .filter(pass -> pass.number() == plan.riskiest().pass())
            .findFirst()
            .orElse(setUp.passes().get(0));
    return new Card(
        setUp,
        mark(setUp.verdict().words()),
        words.of("job.grip", size(setUp.gripDepth()), size(setUp.stickOut())),
        minutes(setUp.minutes()) + " min",
        EndView.of(held, Loads.of(EvidenceGathering.of(held)), "s" + setUp.number()),
        setUp.passes().stream().map(pass -> row(pass, words)).toList(),
        found(setUp),
        riskiest.number() == plan.riskiest().pass(),
        riskiest.firstCentimetre(),
        riskiest.number());
  }

  private static List<String> found(RouteSetUp setUp) {
    Map<String, List<String>> passes = new LinkedHashMap<>();
    for (RoutePass pass : setUp.passes()) {
      String first = pass.first();
      if (first != null) {
        passes
            .computeIfAbsent(first, message -> new ArrayList<>())
            .add(String.valueOf(pass.number()));
      }
    }
    return passes.entrySet().stream()
        .map(found -> String.join(", ", found.getValue()) + ": " + found.getKey())
        .toList();
  }

  private static Row row(RoutePass pass, PageWords words) {
    String part = pass.parts() > 1 ? " " + pass.part() + "/" + pass.parts() : "";
    return new Row(
        pass,
        pass.stage() + part,
        mark(pass.verdict().words()),
        size(pass.takes()),
        size(leaves(pass)),
        FindingView.figure(pass.spindleSpeed()),
        FindingView.figure(pass.tableFeed())
            + " ("
            + FindingView.figure(pass.feedPerTooth())
            + ")",
        words.choice("/cut/feed", pass.feed())
            + (pass.mode() == null || pass.mode().equals("both") ? "" : ", " + pass.mode()),
        size(pass.offset()),
        hundred(pass.chance()));
  }

  private static Quantity leaves(RoutePass pass) {
    return pass.face().startsWith("broad")
        ? pass.after().thickness()
        : pass.face().startsWith("long") ? pass.after().height() : pass.after().length();
  }

  /** A length as it is dialled: to 0.01 mm, or 0.001 in. */
  private static String size(Quantity quantity) {
    double value = quantity.value() instanceof Number number ? number.doubleValue() : 0;
    int digits = "mm".equals(quantity.unit()) ? 2 : 3;
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString())
        + " "
        + quantity.unit();
  }

  private static String tolerance(ToleranceCheck check) {
    Quantity expected = check.expected();
    return check.what()
        + " "
        + FindingView.figure(check.wanted())
        + ": "
        + check.judgement()
        + (expected == null ? "" : " (" + FindingView.figure(expected) + ")");
  }

  private static String mark(String verdict) {
    return verdict.replace(' ', '-');
  }

  private static @Nullable String hundred(@Nullable Double chance) {
    return chance == null ? null : String.valueOf(Math.round(Math.floor(100 * chance)));
  }

  private static String minutes(double minutes) {
    return String.format(Locale.ROOT, "%.0f", minutes);
  }
}
