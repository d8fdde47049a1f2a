package org.standproud.rules.trace;

import java.util.AbstractList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An immutable list computed on first access: most of the trace of most set-ups is never read. Its
 * inputs must not change. There are three for each condition of a trace, so each is a single
 * object: its inputs are fields of a subclass.
 *
 * @param <T> the element type
 */
public abstract class LazyList<T> extends AbstractList<T> {

  private @Nullable List<T> found;

  /** Creates a list not computed yet. */
  protected LazyList() {}

  /** Computes the elements; called at most once. */
  protected abstract List<T> made();

  /** The list itself if it is lazy, otherwise an immutable copy. */
  static <T> List<T> kept(List<T> list) {
    return list instanceof LazyList<T> asked ? asked : List.copyOf(list);
  }

  private synchronized List<T> found() {
    List<T> known = found;
    if (known == null) {
      known = List.copyOf(made());
      found = known;
    }
    return known;
  }

  @Override
  public T get(int index) {
    return found().get(index);
  }

  @Override
  public int size() {
    return found().size();
  }
}
