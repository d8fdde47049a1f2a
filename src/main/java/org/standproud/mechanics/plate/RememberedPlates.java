package org.standproud.mechanics.plate;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;

/**
 * Responses of the plates asked for last, kept by the value of their input so that a search over
 * speeds and feeds, which leaves the stock alone, pays for each stock once. Holds a bounded number,
 * may be shared between threads, of which one computes and the others wait. The answer is the same
 * with or without it.
 */
public final class RememberedPlates {

  private final Cache<PlateInput, PlateResponse> kept;
  private final Cache<PlateInput, PlateSurface> surfaces;

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
    this.kept = Caffeine.newBuilder().maximumSize(capacity).build();
    this.surfaces = Caffeine.newBuilder().maximumSize(capacity).build();
  }

  /**
   * The response of a stock, computed if it is not remembered.
   *
   * @param input the standing stock
   */
  public PlateResponse of(PlateInput input) {
    return kept.get(input, PlateResponse::of);
  }

  /**
   * One stock on any root.
   *
   * @param stock its sizes and material; its root does not matter, but has to be the same always
   */
  public PlateSurface surface(PlateInput stock) {
    return surfaces.get(stock, PlateSurface::new);
  }

  /** How many responses are held. */
  public long size() {
    kept.cleanUp();
    return kept.estimatedSize();
  }
}
