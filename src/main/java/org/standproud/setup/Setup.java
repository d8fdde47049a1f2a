package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A whole proposed set-up, checked and in SI units. What the caller does not know is null, never a
 * default; mechanics puts a stated band in its place.
 *
 * @param job what it is for
 * @param stock the piece
 * @param hold how it is held
 * @param machine the machine
 * @param cutter the cutter
 * @param cut the pass that is asked about
 * @param passes the passes planned on this set-up in order, of which the cut is one, all of one
 *     level where the face is stepped down; empty if the caller does not give them
 * @param units the caller's units, for the answer
 */
@RecordBuilder
public record Setup(
    JobReference job,
    Stock stock,
    Hold hold,
    Machine machine,
    Cutter cutter,
    Cut cut,
    List<PlannedCut> passes,
    UnitSystem units) {

  /** Copies the list; a set-up kept from before there were plans has none. */
  public Setup {
    passes = unplanned(passes) ? List.of() : List.copyOf(passes);
  }

  /** A set-up without planned passes. */
  public Setup(
      JobReference job,
      Stock stock,
      Hold hold,
      Machine machine,
      Cutter cutter,
      Cut cut,
      UnitSystem units) {
    this(job, stock, hold, machine, cutter, cut, List.of(), units);
  }

  private static boolean unplanned(@Nullable List<PlannedCut> passes) {
    return passes == null;
  }

  /** The same with other cut and plan. */
  public Setup with(Cut otherCut, List<PlannedCut> otherPasses) {
    return SetupBuilder.builder(this).cut(otherCut).passes(otherPasses).build();
  }

  /** The cut that is asked about, by the numbers of a planned pass. */
  public PlannedCut asked() {
    Double sideM = cut.operation() == Operation.BROAD_SIDE ? sideDepthM() : null;
    return new PlannedCut(cut.stage(), cut.axialDepthM(), sideM, cut.feedPerToothM());
  }

  /** Overlap of cutter and stock on a broad side, a_e, in m. */
  public double sideDepthM() {
    return cutter.diameterM() / 2 + stock.thicknessM() / 2 - Math.abs(cut.offsetM());
  }

  /** Height of stock above the jaws in m. */
  public double stickOutM() {
    return stock.heightM() - hold.gripDepthM();
  }
}
