package org.standproud.web.recommendation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.plan.PassPlan;
import org.standproud.advice.plan.PlannedPass;
import org.standproud.setup.Mode;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.web.recorded.FindingView;

/**
 * A plan of passes as page and sheet show it: passes with equal settings share a row.
 *
 * @param conclusion the conclusion
 * @param rows the passes in order
 * @param time likely time of all passes, in words
 */
public record PassTable(String conclusion, List<Row> rows, String time) {

  /** Copies the list. */
  public PassTable {
    rows = List.copyOf(rows);
  }

  /**
   * Passes with equal settings.
   *
   * @param number of the first
   * @param last number of the last
   * @param stage rough or finish
   * @param takes amount that each removes
   * @param depth axial depth
   * @param offset cutter axis from the middle
   * @param feed direction of feed
   * @param mode climb or conventional, after a comma; empty if not known
   * @param feedPerTooth feed per tooth
   * @param speed spindle speed
   * @param verdict the verdict
   * @param begin how to begin the first of them
   * @param then what to do after the last of them
   */
  public record Row(
      int number,
      int last,
      String stage,
      String takes,
      String depth,
      String offset,
      String feed,
      String mode,
      String feedPerTooth,
      String speed,
      String verdict,
      String begin,
      List<String> then) {

    /** Copies the list. */
    public Row {
      then = List.copyOf(then);
    }

    static Row of(PlannedPass pass) {
      return new Row(
          pass.number(),
          pass.number(),
          pass.stage(),
          FindingView.figure(pass.takes()),
          FindingView.figure(pass.axialDepth()),
          FindingView.figure(pass.offset()),
          pass.feed(),
          mode(pass.mode()),
          FindingView.figure(pass.feedPerTooth()),
          FindingView.figure(pass.spindleSpeed()),
          pass.verdict().words(),
          pass.firstContact(),
          pass.then());
    }

    private static String mode(@Nullable String mode) {
      if (mode == null) {
        return "";
      }
      return ", " + (mode.equals(Mode.BOTH.words()) ? "climb and conventional" : mode);
    }

    /** The numbers of the passes. */
    public String passes() {
      return last == number ? String.valueOf(number) : number + " to " + last;
    }

    private List<String> setting() {
      return List.of(stage, takes, depth, offset, feed, mode, feedPerTooth, speed, verdict);
    }

    /** A pass followed by one like it has no work after it. */
    private boolean takesIn(Row next) {
      return setting().equals(next.setting()) && then.isEmpty();
    }

    private Row to(Row next) {
      return new Row(
          number,
          next.last,
          stage,
          takes,
          depth,
          offset,
          feed,
          mode,
          feedPerTooth,
          speed,
          verdict,
          begin,
          next.then);
    }
  }

  /** The table of a plan. */
  public static PassTable of(PassPlan plan) {
    List<Row> rows = new ArrayList<>();
    for (PlannedPass pass : plan.passes()) {
      Row row = Row.of(pass);
      int before = rows.size() - 1;
      if (before >= 0 && rows.get(before).takesIn(row)) {
        rows.set(before, rows.get(before).to(row));
      } else {
        rows.add(row);
      }
    }
    return new PassTable(
        plan.conclusion(), rows, String.format(Locale.ROOT, "%.1f min", plan.cutMinutes()));
  }

  /**
   * The amount that one pass of the set-up removes, in m: off the top edge, or off the broad side.
   */
  public static double onePassM(Setup setup) {
    return setup.cut().operation() == Operation.TOP_EDGE
        ? setup.cut().axialDepthM()
        : setup.sideDepthM();
  }

  /** What to do after which pass. */
  public List<String> between() {
    return rows.stream()
        .flatMap(row -> row.then().stream().map(then -> after(row) + then))
        .toList();
  }

  private static String after(Row row) {
    return "After pass " + row.last() + ": ";
  }
}
