package org.standproud.rules.trace;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Where each fact would have to be, worked out when first asked: the search is dear, and most cards
 * of most set-ups are never asked.
 */
final class ChangesWhenAsked extends AbstractList<FactChange> {

  private @Nullable Supplier<List<FactChange>> search;
  private List<FactChange> found = List.of();

  ChangesWhenAsked(Supplier<List<FactChange>> search) {
    this.search = search;
  }

  private synchronized List<FactChange> found() {
    if (search != null) {
      found = List.copyOf(search.get());
      search = null;
    }
    return found;
  }

  @Override
  public FactChange get(int index) {
    return found().get(index);
  }

  @Override
  public int size() {
    return found().size();
  }
}
