package org.standproud.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectPackage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.platform.launcher.EngineFilter;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TagFilter;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.standproud.GeneratedPages;
import org.standproud.IntegrationTest;

/**
 * Holds {@code api-docs/mechanics.md} and its pictures to what the tests make. It runs all tests
 * tagged {@value PublishedTable#TESTS} once more and listens; where pages are written it writes the
 * page instead.
 */
@IntegrationTest
class MechanicsPageTest {

  private static final Path PAGE = Path.of("api-docs/mechanics.md");
  private static final Path PICTURES = Path.of("api-docs/mechanics");
  private static final boolean WRITE = GeneratedPages.areWritten();
  private static MechanicsPage page;

  @BeforeAll
  static void runTheTestsOfPublishedValues() {
    LauncherDiscoveryRequest request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(selectPackage("org.standproud.mechanics"))
            .filters(
                EngineFilter.includeEngines("junit-jupiter"),
                TagFilter.includeTags(PublishedTable.TESTS))
            .build();
    SummaryGeneratingListener summary = new SummaryGeneratingListener();
    List<Figure> figures = new ArrayList<>();
    List<KnownLimit> limits = new ArrayList<>();
    PublishedTable.collect(
        figures::add,
        () ->
            KnownLimit.collect(
                limits::add, () -> LauncherFactory.create().execute(request, summary)));
    assertThat(summary.getSummary().getTotalFailureCount()).isZero();
    figures.sort(Comparator.comparing(figure -> figure.table().source()));
    limits.sort(Comparator.comparing(KnownLimit::beyond));
    page = new MechanicsPage(figures, limits);
  }

  @Test
  void thePageIsWhatTheTestsMake() throws IOException {
    hold(PAGE, page.text());
  }

  @ParameterizedTest
  @EnumSource(Subject.class)
  void everyPictureIsDrawnByTheCode(Subject subject) throws IOException {
    hold(PICTURES.resolve(MechanicsPage.picture(subject)), Pictures.of(subject));
  }

  @Test
  void thereAreAtLeastOneHundredAndFiftyPublishedRows() {
    assertThat(page.rows()).isGreaterThanOrEqualTo(150);
  }

  private static void hold(Path file, String made) throws IOException {
    if (WRITE) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, made);
    }
    assertThat(file).content().isEqualTo(made);
  }
}
