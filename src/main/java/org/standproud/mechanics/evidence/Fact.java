package org.standproud.mechanics.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.QuantityKind;

/**
 * A published fact of a set-up: what rule cards may speak of.
 *
 * @param name the name used in cards and answers: plain trade words, lower case, perhaps with
 *     spaces and hyphens
 * @param type what kind of value it has
 * @param meaning what it means, in one sentence
 * @param origin the field that states it, or the formula that computes it
 * @param leeway how far a shop can change its number; null if it cannot, or not for one set-up
 */
public record Fact(String name, Type type, String meaning, Origin origin, @Nullable Leeway leeway) {

  /** A fact that a shop cannot change to please a card. */
  public Fact(String name, Type type, String meaning, Origin origin) {
    this(name, type, meaning, origin, null);
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

  /** Where the value of a fact comes from. */
  public sealed interface Origin permits Stated, Computed {

    /** What to measure or state where there is no value; null if there always is one. */
    @Nullable String question();
  }

  /**
   * The request states it.
   *
   * @param field where
   * @param question what to measure or state where it is not known; null if it has to be given
   */
  public record Stated(FieldPointer field, @Nullable String question) implements Origin {}

  /**
   * Mechanics computes it.
   *
   * @param formula the class whose javadoc gives formula, units, validity and source
   * @param question what to measure or state where an input is missing; null if none can be
   */
  public record Computed(Class<?> formula, @Nullable String question) implements Origin {}

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

  /** The field of the request that states it; null if it is computed. */
  public @Nullable FieldPointer field() {
    return origin instanceof Stated stated ? stated.field : null;
  }

  /** What gives it, for answers: the name of a class, or that the request states it. */
  public String formula() {
    return origin instanceof Computed computed
        ? computed.formula.getSimpleName()
        : "as the request says";
  }

  /** Dimension, units and range of its number or numbers; null if it has none. */
  public @Nullable Number number() {
    if (type instanceof Numbers numbers) {
      return numbers.each;
    }
    return type instanceof Number number ? number : null;
  }
}
