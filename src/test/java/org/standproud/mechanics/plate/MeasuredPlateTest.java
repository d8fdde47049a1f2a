package org.standproud.mechanics.plate;

import static org.standproud.mechanics.published.MeasuredTable.number;

import java.util.List;
import java.util.Map;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.published.MeasuredTable;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.ResultKind;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.mechanics.vibration.Mode;

/** Notes of a real plate clamped along one edge. */
class MeasuredPlateTest {

  private static final PublishedTable PLATE =
      new PublishedTable(
          Subject.PLATE,
          "measured: aluminium plate 100 x 80 x 4 mm, Du and others, IJMS 274 (2024) 109257, tables 1 and 4, figure 12 (through a copy)",
          SourceTag.FOUND,
          ResultKind.MEASURED);

  /** A clamp that does not give. */
  private static final double STIFF = 1e17;

  @Test
  @Tag(PublishedTable.TESTS)
  void aClampedPlateRingsAsMeasured() {
    double young = 69e9;
    GrippedFoot foot =
        GrippedFoot.betweenFaces(young, 0.33, 0.004, 0.02, STIFF, STIFF, 1, 0.15, 1e6, 0);
    RootStiffness root = foot.clamped().orElseThrow().smallSignal().orElseThrow();
    PlateOnFoot plate = new PlateOnFoot(0.08, 0.1, 0.004, 0.1, 0.33, young, root, RitzOrder.FINE);
    PlateOnFoot.Place corner = plate.place(new PlatePoint(0.05, 0.08));
    List<Mode> modes = plate.modes(corner, young, 2830, root);
    double give = plate.flexibilityMPerN(corner, young, root);
    for (Map<String, String> row : MeasuredTable.rows("clamped-plate.csv")) {
      int number = (int) number(row, "number");
      if ("note".equals(row.get("kind"))) {
        PLATE
            .row("note " + number)
            .percent("frequency", "Hz", number(row, "hz"), modes.get(number - 1).frequencyHz(), 5);
      } else if (number == 1) {
        // The higher ones hang on modes beyond the six that are kept.
        PLATE
            .row("antiresonance " + number + " of a top corner, read off a figure")
            .percent("frequency", "Hz", number(row, "hz"), antiresonance(modes, give, number), 5);
      }
    }
  }

  /** Where the driving point stands still between a mode and the next. */
  private static double antiresonance(List<Mode> modes, double give, int number) {
    double rest = give - modes.stream().mapToDouble(m -> 1 / m.stiffnessNPerM()).sum();
    return new BrentSolver(1e-6)
        .solve(
            200,
            hz -> {
              double sum = rest;
              for (Mode mode : modes) {
                double r = hz / mode.frequencyHz();
                sum += 1 / (mode.stiffnessNPerM() * (1 - r * r));
              }
              return sum;
            },
            1.0001 * modes.get(number - 1).frequencyHz(),
            0.9999 * modes.get(number).frequencyHz());
  }
}
