package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.request.CutterFields;

/**
 * The inputs of a pass without bands: the likely case, and the corners of the bands.
 *
 * <p>The force of a tooth grows with feed, specific force, exponent (chips under 1 mm) and wear
 * together, so those go low and high together. Uneven teeth raise peaks and lower means, so even
 * (least run-out, chipped teeth cut) and uneven (greatest run-out, chipped teeth do not cut) are
 * crossed with them.
 *
 * @param likely the likely case, with one split
 * @param corners the other cases, each with its splits; the last is the heaviest
 * @param assumptions what was taken for inputs that are not known
 */
record ForceCases(ForceCase likely, List<ForceCase> corners, List<Assumption> assumptions) {

  static final Band UNKNOWN_RUN_OUT_M = new Band(0, 0.02e-3, 0.05e-3);

  static ForceCases of(ForceInput input) {
    Cutter cutter = input.cutter();
    List<Assumption> assumptions = new ArrayList<>(input.assumptions());
    Band runOut = runOut(cutter, assumptions);
    Set<Integer> missing = Set.copyOf(cutter.missingTeeth());
    Set<Integer> chipped = withChipped(cutter, missing, assumptions);
    EdgeInCut edge =
        EdgeInCut.of(input.cut().axialDepthM(), cutter.enteringAngleRad(), cutter.cornerRadiusM());
    ToothRing usual = ToothRing.of(cutter.teeth(), chipped, runOut.likely());
    ToothRing even = ToothRing.of(cutter.teeth(), missing, runOut.low());
    ToothRing uneven = ToothRing.of(cutter.teeth(), chipped, runOut.high());
    List<ToothRing> rings =
        runOut.isExact() && chipped.equals(missing) ? List.of(usual) : List.of(even, uneven);
    List<ForceCase> corners = new ArrayList<>();
    for (BandEnd end : List.of(BandEnd.LOW, BandEnd.HIGH)) {
      for (ToothRing ring : rings) {
        corners.add(caseAt(input, end, ring, edge));
      }
    }
    ForceCase likely =
        new ForceCase(
            input.model().law(BandEnd.LIKELY),
            List.of(input.model().split(BandEnd.LIKELY)),
            usual,
            input.cut().feedPerToothM().likely(),
            edge);
    return new ForceCases(likely, corners, assumptions);
  }

  private static ForceCase caseAt(ForceInput input, BandEnd end, ToothRing ring, EdgeInCut edge) {
    Set<ForceSplit> splits = new LinkedHashSet<>();
    splits.add(input.model().split(BandEnd.LOW));
    splits.add(input.model().split(BandEnd.HIGH));
    return new ForceCase(
        input.model().law(end),
        List.copyOf(splits),
        ring,
        end.of(input.cut().feedPerToothM()),
        edge);
  }

  static Band runOut(Cutter cutter, List<Assumption> assumptions) {
    Double measured = cutter.runOutM();
    if (measured != null) {
      return Band.exactly(OutsideValidity.within("run-out", measured, 0, 2e-3, "m"));
    }
    assumptions.add(
        new Assumption(
            CutterFields.RUN_OUT,
            "run-out not measured: half of the cutters under 0.018 mm, a twentieth over 0.05 mm,"
                + " turned the worst way",
            "common practice, no source",
            "the run-out of the cutter in the spindle, with an indicator"));
    return UNKNOWN_RUN_OUT_M;
  }

  /** Missing and chipped teeth together; if that leaves none, the chipped ones are left to cut. */
  static Set<Integer> withChipped(
      Cutter cutter, Set<Integer> missing, List<Assumption> assumptions) {
    Set<Integer> absent = new HashSet<>(missing);
    absent.addAll(cutter.chippedTeeth());
    if (cutter.edge() == EdgeCondition.CHIPPED && cutter.chippedTeeth().isEmpty()) {
      int first = 0;
      while (missing.contains(first)) {
        first++;
      }
      absent.add(first);
      assumptions.add(
          new Assumption(
              CutterFields.CHIPPED,
              "edges are chipped, which is not said: one tooth is taken not to cut, so that the"
                  + " tooth behind it takes a double bite",
              "common practice, no source",
              "which teeth are chipped, with a loupe"));
    }
    boolean noneLeft = true;
    for (int tooth = 0; tooth < cutter.teeth(); tooth++) {
      noneLeft &= absent.contains(tooth);
    }
    return noneLeft ? missing : absent;
  }
}
