package org.standproud.rules.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Truth;
import org.standproud.setup.Band;
import org.standproud.setup.units.Dimension;

/**
 * How far a comparison is from flipping. Clearances are positive while what would flag the card
 * does not hold, negative by how much it does; in the SI unit of the dimension.
 *
 * @param compared the comparison
 * @param holds whether it is about the comparison holding, not about its opposite
 * @param place which number of a list it is about, counted from 1; null if about none
 * @param left what the left side comes to
 * @param right what the right side comes to
 * @param changes for each fact in the comparison, where it would have to be
 */
public record Margin(
    Condition.Comparison compared,
    boolean holds,
    @Nullable Integer place,
    Band left,
    Band right,
    List<FactChange> changes) {

  /** Copies the list, unless it is one that nobody can change and that is yet to be worked out. */
  public Margin {
    changes = LazyList.kept(changes);
  }

  /** What can be said of the comparison itself. */
  public Truth truth() {
    return compared.relation().of(left, right);
  }

  /** Likely value of the left side. */
  public double value() {
    return left.likely();
  }

  /** Likely value of the right side. */
  public double threshold() {
    return right.likely();
  }

  /** Distance between the likely values. */
  public double clearance() {
    return Clearance.of(compared.relation(), holds).likely(left, right);
  }

  /** Distance at the worst ends of the bands; never more than the clearance. */
  public double adverse() {
    return Clearance.of(compared.relation(), holds).adverse(left, right);
  }

  /** Size of the clearance as a part of the larger of value and threshold. */
  public double relative() {
    double larger = Math.max(Math.abs(value()), Math.abs(threshold()));
    return larger == 0 ? 0 : Math.abs(clearance()) / larger;
  }

  /** The comparison in words. */
  public String comparison() {
    return (holds ? "" : "not: ") + compared.toWords();
  }

  /** Dimension of both sides, or null if it has no name. */
  public @Nullable Dimension dimension() {
    return compared.dimension();
  }

  /** What a fact of the comparison is called: its name, or "number 2 of" the list it is. */
  public String of(Fact fact) {
    return fact.type() instanceof Fact.Numbers
        ? "number " + place + " of " + fact.name()
        : fact.name();
  }
}
