package org.standproud.audit.chain;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;

/** Missing positions as ranges, so that a million missing records cost no more than one. */
final class Gaps {

  private final NavigableMap<Long, Long> lastByFirst = new TreeMap<>();

  void open(long first, long last) {
    if (first <= last) {
      lastByFirst.put(first, last);
    }
  }

  boolean close(long place) {
    Map.Entry<Long, Long> range = lastByFirst.floorEntry(place);
    if (range == null || range.getValue() < place) {
      return false;
    }
    lastByFirst.remove(range.getKey());
    open(range.getKey(), place - 1);
    open(place + 1, range.getValue());
    return true;
  }

  LongStream first(long limit, LongPredicate wanted) {
    return lastByFirst.entrySet().stream()
        .flatMapToLong(r -> LongStream.rangeClosed(r.getKey(), r.getValue()))
        .limit(limit)
        .filter(wanted);
  }

  Map<Long, Long> ranges() {
    return lastByFirst;
  }
}
