package org.standproud.mechanics.plate;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Responses of the plates asked for last, kept by the value of their input so that a search over
 * speeds and feeds, which leaves the stock alone, pays for each stock once. Holds a bounded number,
 * drops the one unused longest, may be shared between threads. The answer is the same with or
 * without it.
 */
public final class RememberedPlates {

  private final Map<PlateInput, PlateResponse> kept;
  private final Map<PlateInput, PlateSurface> surfaces;

  /**
   * An empty memory.
   *
   * @param capacity how many responses it may hold, at least 1
   * @throws IllegalArgumentException if the capacity is less than 1
   */
  public RememberedPlates(int capacity) {
    if (capacity < 1) {
      throw new IllegalArgumentException("capacity must be at least 1, got " + capacity);
    }
    this.kept = leastUsed(capacity);
    this.surfaces = leastUsed(capacity);
  }

  private static <T> Map<PlateInput, T> leastUsed(int capacity) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      private static final long serialVersionUID = 1L;

      @Override
      protected boolean removeEldestEntry(Map.Entry<PlateInput, T> eldest) {
        return super.size() > capacity;
      }
    };
  }

  /**
   * The response of a stock, computed if it is not remembered.
   *
   * @param input the standing stock
   */
  public PlateResponse of(PlateInput input) {
    synchronized (kept) {
      PlateResponse known = kept.get(input);
      if (known != null) {
        return known;
      }
    }
    // Computed outside the lock: two threads may both compute it, to the same value.
    PlateResponse response = PlateResponse.of(input);
    synchronized (kept) {
      kept.put(input, response);
    }
    return response;
  }

  /**
   * One stock on any root.
   *
   * @param stock its sizes and material; its root does not matter, but has to be the same always
   */
  public PlateSurface surface(PlateInput stock) {
    synchronized (surfaces) {
      return surfaces.computeIfAbsent(stock, PlateSurface::new);
    }
  }

  /** How many responses are held. */
  public int size() {
    synchronized (kept) {
      return kept.size();
    }
  }
}
