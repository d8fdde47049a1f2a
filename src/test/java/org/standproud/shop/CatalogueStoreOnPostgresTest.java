package org.standproud.shop;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.assertj.core.data.Offset;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.setup.request.CatalogueShelf;
import tools.jackson.databind.node.ObjectNode;

/** Two replicas of the service on one PostgreSQL, which change one catalogue. */
@IntegrationTest
class CatalogueStoreOnPostgresTest {

  private static final Clock SEVEN =
      Clock.fixed(Instant.parse("2026-03-02T07:00:00Z"), ZoneOffset.UTC);
  private static final SeedCatalogue SEEDS = SeedCatalogue.read(Path.of("seeds"));
  private static final String VISE = "ground vise 150";

  @Test
  void replicasKeepOneCatalogueThroughEditsMadeAtOnce() throws Exception {
    try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
      DataSource database = server.getPostgresDatabase();
      Flyway.configure().dataSource(database).load().migrate();
      CatalogueStore one = new CatalogueStore(database, SEVEN);
      CatalogueStore two = new CatalogueStore(database, SEVEN);
      ShopCatalogue first = new ShopCatalogue(one, () -> SEEDS);
      ShopCatalogue second = new ShopCatalogue(two, () -> SEEDS);
      assertThat(first.get()).isEqualTo(SEEDS.get()).isEqualTo(second.get());
      assertThat(one.revisions(null, Long.MAX_VALUE, 10)).hasSize(1);

      ExecutorService engineers = Executors.newFixedThreadPool(4);
      List<Future<CatalogueSnapshot>> edits = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        CatalogueStore here = i % 2 == 0 ? one : two;
        edits.add(
            engineers.submit(() -> here.change(CatalogueStoreOnPostgresTest::wider, "e", "w")));
      }
      for (Future<CatalogueSnapshot> edit : edits) {
        edit.get();
      }
      engineers.shutdown();
      double before = SEEDS.get().orElseThrow().vises().get(VISE).jawWidthM();
      assertThat(one.now().catalogue().vises().get(VISE).jawWidthM())
          .as("no edit was lost")
          .isCloseTo(before + 0.012, Offset.offset(1e-9));
      assertThat(two.now().catalogue()).isEqualTo(one.now().catalogue());
      assertThat(one.history(CatalogueShelf.VISES, VISE)).hasSize(13);
    }
  }

  private static List<CatalogueSnapshot.Change> wider(CatalogueSnapshot now) {
    ObjectNode vise = (ObjectNode) now.items().get(CatalogueShelf.VISES).get(VISE).content().tree();
    vise.put("jawWidth", vise.get("jawWidth").doubleValue() + 1);
    return List.of(
        new CatalogueSnapshot.Change(CatalogueShelf.VISES, VISE, CanonicalJson.of(vise)));
  }
}
