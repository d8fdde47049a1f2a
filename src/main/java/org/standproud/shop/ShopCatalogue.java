package org.standproud.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.setup.catalogue.Catalogue;

/** The catalogue in service, or the reason why there is none. */
public final class ShopCatalogue {

  private final CatalogueStore store;
  private final String seedFault;

  /**
   * Creates the holder; an empty database starts with the seeds.
   *
   * @param store the store
   * @param seeds the first catalogue; read only for an empty database
   */
  public ShopCatalogue(CatalogueStore store, Supplier<SeedCatalogue> seeds) {
    this.store = store;
    this.seedFault = store.now().sequence() == 0 ? begin(seeds.get()) : "";
  }

  private String begin(SeedCatalogue seeds) {
    List<CatalogueSnapshot.Change> all = new ArrayList<>();
    seeds
        .items()
        .forEach(
            (shelf, items) ->
                items.forEach(
                    (name, item) ->
                        all.add(
                            new CatalogueSnapshot.Change(shelf, name, CanonicalJson.of(item)))));
    if (!all.isEmpty()) {
      store.change(
          now -> now.sequence() == 0 ? all : List.of(),
          "start of the service",
          "the files of the shop, as the catalogue began");
    }
    return seeds.fault();
  }

  /** The catalogue; empty if there is none yet. */
  public Optional<Catalogue> get() {
    try {
      CatalogueSnapshot now = store.now();
      return now.sequence() == 0 ? Optional.empty() : Optional.of(now.catalogue());
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Why there is no catalogue; empty if there is one. */
  public String fault() {
    try {
      return store.now().sequence() == 0 ? seedFault : "";
    } catch (IllegalArgumentException e) {
      return "an item of the catalogue cannot be read: " + e.getMessage();
    }
  }
}
