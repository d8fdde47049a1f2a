package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;

/** What holds for every page, however it is looked at. */
@InChromium
@IntegrationTest
class EveryPageTest {

  /** Least contrast of text in WCAG 2.2, success criterion 1.4.3; large text needs 3. */
  private static final double LARGE_TEXT = 3;

  private static Map<String, String> pages;
  private static Shop shop;

  @BeforeAll
  static void records(Shop open) {
    shop = open;
  }

  /** The address of each page by the name of its picture. */
  static java.util.stream.Stream<Map.Entry<String, String>> pages() {
    if (pages == null) {
      String fine = shop.assessed(Shop.seed("01"));
      String bad = shop.assessed(Shop.seed("03"));
      String unmeasured = shop.assessed(Shop.seed("12"));
      Map<String, String> all = new LinkedHashMap<>();
      all.put("setup-empty", "/");
      all.put("setup-filled", "/?from=" + Shop.seed("09"));
      all.put("answer-run", "/assessments/" + fine);
      all.put("answer-do-not-run", "/assessments/" + bad);
      all.put("answer-not-judged", "/assessments/" + unmeasured);
      all.put("remedies", "/assessments/" + bad + "/remedies");
      all.put("plots", "/assessments/" + fine + "/plots");
      all.put("plan", "/assessments/" + fine + "/plan");
      all.put("rules", "/rules");
      all.put("rule", "/rules/HOLD-001");
      all.put("rule-edit", "/rules/HOLD-001/edit");
      all.put("rule-new", "/rules/new");
      all.put("rule-history", "/rules/history");
      all.put("rule-proposals", "/rules/proposals");
      all.put("records", "/records?card=HOLD-001");
      all.put("record", "/records/" + bad + "/reassessment");
      all.put("tap-test", "/tap-test");
      all.put("job", "/jobs?example");
      all.put("job-refused", "/jobs/route");
      all.put("job-route", "/jobs/route?" + JobPagesTest.EDGES);
      all.put("chain", "/records/chain");
      all.put("fault", "/rules/HOLD-999");
      pages = all;
    }
    return pages.entrySet().stream();
  }

  /** Each page is opened once and looked at in turn, for its style sheet follows the window. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void anAccessibilityCheckerFindsNothingAndNothingIsTooWideHoweverAPageIsLookedAt(
      Map.Entry<String, String> page, Browser browser) {
    browser.look(Look.WIDE);
    browser.open(page.getValue());
    for (Look look : new Look[] {Look.WIDE, Look.NARROW_DARK, Look.ZOOMED}) {
      browser.look(look);
      browser.keep(page.getKey() + "-" + look.name());
      assertThat(browser.tooWide()).as("too wide for " + look.name()).isLessThanOrEqualTo(0);
      if (look != Look.ZOOMED) {
        Accessibility found =
            look == Look.WIDE ? Accessibility.of(browser) : Accessibility.ofLook(browser);
        assertThat(found.violations()).as(look.name()).isEmpty();
        assertThat(found.measured()).as("texts measured").isPositive();
        assertThat(found.leastContrast())
            .as("contrast in " + look.name())
            .isGreaterThan(LARGE_TEXT);
      }
    }
  }

  @Test
  void pagesAndTheirFilesTravelPacked() {
    for (String path : new String[] {"/", "/rules", "/look/site.css", "/look/bench.js"}) {
      assertThat(shop.packed(path)).as(path).isEqualTo("gzip");
    }
  }

  /** Graphical objects need 3 to 1 (WCAG 2.2, success criterion 1.4.11), text 4.5 to 1. */
  @Test
  void theLinesAndLettersOfADrawingStandOutFromThePaper(Browser browser) {
    for (Look look : new Look[] {Look.WIDE, Look.WIDE_DARK}) {
      browser.look(look);
      browser.open("/assessments/" + shop.assessed(Shop.seed("03")));
      assertThat(Contrast.of(browser, ".drawing text", "fill"))
          .as("letters, " + look.name())
          .isGreaterThanOrEqualTo(4.5);
      assertThat(
              Contrast.of(browser, ".i-stock, .i-vise, .i-cutter, .i-cutting, .i-motion", "stroke"))
          .as("lines, " + look.name())
          .isGreaterThanOrEqualTo(3);
    }
  }
}
