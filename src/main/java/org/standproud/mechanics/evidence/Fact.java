package org.standproud.mechanics.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.QuantityKind;

/**
 * A published fact of a set-up: what rule cards may speak of.
 *
 * @param name the name used in cards and answers: plain trade words, lower case, perhaps with
 *     spaces and hyphens
 * @param type what kind of value it has
 * @param meaning what it means, in one sentence
 * @param formula the class or statement that gives it
 * @param leeway how far a shop can change its number; null if it cannot, or not for one set-up
 */
public record Fact(
    String name, Type type, String meaning, String formula, @Nullable Leeway leeway) {

  /** A fact that a shop cannot change to please a card. */
  public Fact(String name, Type type, String meaning, String formula) {
    this(name, type, meaning, formula, null);
  }

  /**
   * How far a shop can change a number on the job it has, as factors of what it is; common
   * practice, no source.
   *
   * @param least least factor, 0 to 1
   * @param greatest greatest factor, 1 or more
   */
  public record Leeway(double least, double greatest) {

    /** Whether a shop could change a number to another. */
    public boolean allows(double from, double to) {
      return to >= least * from && to <= greatest * from;
    }
  }

  /** What kind of value a fact has. */
  public sealed interface Type permits Number, Numbers, Word, YesNo {}

  /**
   * A number with a dimension.
   *
   * @param kind its dimension and the units in which a shop writes it
   * @param least least value that makes sense, in SI
   * @param greatest greatest value that makes sense, in SI
   */
  public record Number(QuantityKind kind, double least, double greatest) implements Type {

    /** A number shown in the usual unit of its dimension. */
    public Number(Dimension dimension, double least, double greatest) {
      this(QuantityKind.of(dimension), least, greatest);
    }

    /** The dimension. */
    public Dimension dimension() {
      return kind.dimension();
    }
  }

  /**
   * A list of numbers of one dimension, such as one for each pass.
   *
   * @param each dimension, units and range of each
   */
  public record Numbers(Number each) implements Type {}

  /**
   * One of a closed list of words.
   *
   * @param allowed the words
   */
  public record Word(List<String> allowed) implements Type {
    /** Copies the list. */
    public Word {
      allowed = List.copyOf(allowed);
    }
  }

  /** True or false. */
  public record YesNo() implements Type {}

  /** The name alone: no two facts share one, and a fact is looked up often. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** Dimension, units and range of its number or numbers; null if it has none. */
  public @Nullable Number number() {
    if (type instanceof Numbers numbers) {
      return numbers.each;
    }
    return type instanceof Number number ? number : null;
  }
}
