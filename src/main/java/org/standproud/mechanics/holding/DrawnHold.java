package org.standproud.mechanics.holding;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.JawBearings.Pair;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;

/**
 * The margins of one hold at single values of all that is a band; made once, asked many times. The
 * bearings between their worst, likely and best are interpolated in depth. A push toward the fixed
 * jaw takes its share from the clamping force; a push away from it is not counted on to add any.
 */
public final class DrawnHold {

  private final HoldingEnds ends;

  private DrawnHold(HoldingEnds ends) {
    this.ends = ends;
  }

  /**
   * The margins at one draw; each is capacity over demand.
   *
   * @param combined all together
   * @param slip slip alone
   * @param lift lift alone
   * @param tipTowardFixed tip toward the fixed jaw alone
   * @param tipAway tip away from it alone
   */
  public record Margins(
      double combined, double slip, double lift, double tipTowardFixed, double tipAway) {

    /** The least of them. */
    public double least() {
      return Math.min(Math.min(combined, Math.min(slip, lift)), Math.min(tipTowardFixed, tipAway));
    }
  }

  /**
   * The hold of an input, of whose load only the place counts.
   *
   * @param input the hold
   * @throws OutsideValidity if a value lies outside the range of a formula
   */
  public static DrawnHold of(HoldingInput input) {
    return new DrawnHold(HoldingEnds.of(input));
  }

  /** Clamping force over its band in N. */
  public Band clampingForceN() {
    return ends.clampingForceN();
  }

  /** Friction over its band. */
  public Band friction() {
    return ends.friction();
  }

  /**
   * The margins at one draw.
   *
   * @param draw single values
   */
  public Margins at(HoldDraw draw) {
    HoldingEnd likely = ends.likely();
    HoldingEnd end =
        new HoldingEnd(
            likely.input(),
            likely.gripM(),
            likely.lengthM(),
            draw.clampingForceN(),
            draw.friction(),
            draw.peaks(),
            between(ends.adverse().toward(), likely.toward(), ends.favourable().toward(), draw),
            between(ends.adverse().away(), likely.away(), ends.favourable().away(), draw),
            draw.movableJawNPerM() / (draw.movableJawNPerM() + draw.fixedJawNPerM()),
            0,
            likely.root(),
            likely.movableLineM(),
            likely.leanRad());
    JawGrip grip = end.grip();
    return new Margins(
        end.combinedMargin(),
        grip.slipMargin(draw.peaks()),
        grip.liftMargin(draw.peaks()),
        Margin.of(end.limitTowardN(), draw.peaks().towardFixedN()),
        Margin.of(end.limitAwayN(), draw.peaks().awayN()));
  }

  private static Pair between(Pair worst, Pair likely, Pair best, HoldDraw draw) {
    Pair other = draw.bearing() < 0 ? worst : best;
    double share = Math.abs(draw.bearing());
    return new Pair(
        between(likely.movable(), other.movable(), share),
        between(likely.fixed(), other.fixed(), share));
  }

  private static Bearing between(Bearing from, Bearing to, double share) {
    return new Bearing(
        from.shallowestM() + share * (to.shallowestM() - from.shallowestM()),
        from.deepestM() + share * (to.deepestM() - from.deepestM()));
  }
}
