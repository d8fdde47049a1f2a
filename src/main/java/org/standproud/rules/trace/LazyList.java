package org.standproud.rules.trace;

import java.util.AbstractList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A list that nobody can change and that is worked out when first asked: most of what a trace can
 * tell of most set-ups is never asked. What it is worked out from must not change. There are three
 * for each condition of a trace, so each is one object: what it is made from lies in a class of its
 * own.
 *
 * @param <T> what it lists
 */
public abstract class LazyList<T> extends AbstractList<T> {

  private @Nullable List<T> found;

  /** A list yet to be worked out. */
  protected LazyList() {}

  /** Its elements; asked for once at most. */
  protected abstract List<T> made();

  /** The list itself if it is yet to be worked out, else a copy nobody can change. */
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
