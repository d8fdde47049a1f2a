package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Estimate;
import org.standproud.setup.units.Dimension;

/**
 * How far a comparison is from flipping. Clearances are positive while the card's condition does
 * not hold, and negative while it does; in the SI unit of the dimension.
 *
 * @param compared the comparison
 * @param holds whether it is about the comparison holding, not about its opposite
 * @param place position in a list, from 1; null if it is not about a list
 * @param left value of the left side, in at least one draw
 * @param right value of the right side, in at least one draw
 * @param draws the draws in which the comparison holds
 * @param level the share of the draws above which the card fires
 * @param adverse distance in the draw at the level: where it turns negative, the comparison begins
 *     to hold in more draws than the level
 * @param changes for each fact in the comparison, the value at which it flips
 */
public record Margin(
    Condition.Comparison compared,
    boolean holds,
    @Nullable Integer place,
    Estimate.Known left,
    Estimate.Known right,
    DrawTruth draws,
    double level,
    double adverse,
    List<FactChange> changes) {

  /** Copies the list, unless it is lazy. */
  public Margin {
    changes = LazyList.kept(changes);
  }

  /** Likely value of the left side. */
  public double value() {
    return left.band().likely();
  }

  /** Likely value of the right side. */
  public double threshold() {
    return right.band().likely();
  }

  /** Distance between the likely values. */
  public double clearance() {
    return Clearance.of(compared.relation(), holds).likely(left.band(), right.band());
  }

  /** The clearance as a fraction of the larger of value and threshold. */
  public double relative() {
    return part(clearance());
  }

  /** The distance at the level, likewise. */
  double relativeAtLevel() {
    return part(adverse);
  }

  private double part(double distance) {
    double larger = Math.max(Math.abs(value()), Math.abs(threshold()));
    return larger == 0 ? 0 : Math.abs(distance) / larger;
  }

  /** The comparison in words. */
  public String comparison() {
    return (holds ? "" : "not: ") + compared.toWords();
  }

  /** Dimension of both sides, or null if it has no name. */
  public @Nullable Dimension dimension() {
    return compared.dimension();
  }

  /** The name of a fact of the comparison, or "number 2 of" its list. */
  public String of(Fact fact) {
    return fact.type() instanceof Fact.Numbers
        ? "number " + place + " of " + fact.name()
        : fact.name();
  }
}
