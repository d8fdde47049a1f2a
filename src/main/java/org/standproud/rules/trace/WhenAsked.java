package org.standproud.rules.trace;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A list that nobody can change and that is worked out when first asked: most of what a trace can
 * tell of most set-ups is never asked. What it is worked out from must not change.
 *
 * @param <T> what it lists
 */
public final class WhenAsked<T> extends AbstractList<T> {

  private @Nullable Supplier<List<T>> source;
  private List<T> found = List.of();

  /**
   * A list yet to be worked out.
   *
   * @param source gives its elements; asked once at most
   */
  public WhenAsked(Supplier<List<T>> source) {
    this.source = source;
  }

  /** The list itself if it is yet to be worked out, else a copy nobody can change. */
  static <T> List<T> kept(List<T> list) {
    return list instanceof WhenAsked<T> asked ? asked : List.copyOf(list);
  }

  private synchronized List<T> found() {
    if (source != null) {
      found = List.copyOf(source.get());
      source = null;
    }
    return found;
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
