package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.standproud.IntegrationTest;

/**
 * The first minute at the mill: what a machinist does before anything is understood of the page.
 */
@IntegrationTest
@InChromium
class FirstMinuteTest {

  /** Least height of letters as they are rendered, in CSS pixels; common practice, no source. */
  private static final double LEAST_LETTER = 12;

  /** What is in the window without scrolling. */
  private static final String IN_VIEW =
      "(() => { const r = arguments[0].getBoundingClientRect();"
          + " return r.height > 0 && r.top >= 0 && r.bottom <= innerHeight; })()";

  /** Height of the least letters of all drawings that show, as rendered. */
  private static final String LETTERS =
      "Math.min(...[...document.querySelectorAll('svg.drawing text')]"
          + ".filter(t => t.getBoundingClientRect().width > 0)"
          + ".map(t => parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a)) * 1.0001";

  /** Less than the page has of fields, buttons and links. */
  private static final int LEAST_REACHED = 60;

  /** What the Tab key reaches. */
  private static final String TABBED =
      "[...document.querySelectorAll('a[href], button, input, select, textarea, summary')]"
          + ".filter(e => !e.disabled && e.tabIndex >= 0 && e.checkVisibility()"
          + " && e.getClientRects().length > 0)";

  private static final String REACHED = TABBED + ".map(e => e.outerHTML)";

  /** What is wholly hidden by the bar when it has the focus (WCAG 2.2, criterion 2.4.11). */
  private static final String HIDDEN =
      "(upwards => { const bar = document.querySelector('.bar'), all = "
          + TABBED
          + "; if (upwards) all.reverse(); return all.filter(e => { e.focus();"
          + " if (document.activeElement !== e) return true;"
          + " if (!bar || bar.contains(e)) return false;"
          + " const r = e.getBoundingClientRect(), b = bar.getBoundingClientRect();"
          + " return r.height > 0 && r.top >= b.top - 1 && r.bottom <= b.bottom + 1;"
          + " }).map(e => e.outerHTML); })(arguments[0])";

  static Stream<Look> looks() {
    return Stream.of(Look.WIDE, Look.TABLET, Look.NARROW);
  }

  private static String value(Browser browser, String css) {
    return browser.one(css).getAttribute("value");
  }

  private static boolean inView(Browser browser, WebElement element) {
    return browser.<Boolean>ask(IN_VIEW, element);
  }

  @Test
  void enterInAFieldChecksTheSetUp(Browser browser) {
    for (String field : List.of("#f-stock-length", "#f-hold-gripDepth", "#f-job-jobOrder")) {
      browser.open("/?from=" + Shop.seed("01"));
      browser.leaving(() -> browser.one(field).sendKeys(Keys.ENTER));
      assertThat(browser.text("#verdict")).as(field).isEqualTo("Run");
    }
  }

  @Test
  void aBlankFormIsSwitchedToInchAndRemembersIt(Browser browser) {
    browser.open("/");
    browser.press("Switch to inch");
    browser.until(b -> value(b, "[name='/units']").equals("inch"));
    browser.until(b -> b.text(".units").contains("are in in."));
    browser.open("/rules");
    browser.open("/");
    assertThat(value(browser, "[name='/units']")).isEqualTo("inch");
  }

  @Test
  void unitsThereAndBackLeaveEveryNumberAsItWasTyped(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    browser.type("#f-stock-height", "90");
    browser.type("#f-hold-clampingForce", "25-35 kN");
    browser.press("Switch to inch");
    browser.until(b -> value(b, "#f-stock-height").equals("3.54331"));
    assertThat(value(browser, "#f-hold-clampingForce")).isEqualTo("25-35 kN");
    browser.press("Switch to metric");
    browser.until(b -> value(b, "#f-stock-height").equals("90"));
    assertThat(value(browser, "#f-stock-length")).isEqualTo("140");
  }

  @Test
  void nothingThatWasTypedIsLostByALinkTheBackButtonOrAReload(Browser browser) {
    browser.open("/");
    browser.type("#f-stock-length", "140");
    browser.type("#f-stock-thickness", "5/8\"");
    browser.pick("#f-hold-vise", "ground vise 150");
    browser.leaving(() -> browser.driver().findElement(By.linkText("Rules")).click());
    browser.back();
    browser.until(b -> value(b, "#f-stock-thickness").equals("5/8\""));
    assertThat(value(browser, "#f-stock-length")).isEqualTo("140");
    assertThat(value(browser, "#f-hold-vise")).isEqualTo("ground vise 150");
    browser.press("Switch to inch");
    browser.until(b -> value(b, "#f-stock-length").equals("5.51181"));
    browser.reload();
    browser.until(b -> value(b, "#f-stock-length").equals("5.51181"));
    browser.press("Switch to metric");
    browser.until(b -> value(b, "#f-stock-length").equals("140"));
    browser.follow("New set-up");
    assertThat(value(browser, "#f-stock-length")).isEmpty();
    browser.press("Continue it");
    browser.until(b -> value(b, "#f-stock-length").equals("140"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("looks")
  void theVerdictWhatToDoAndTheButtonAreInViewWithoutScrolling(
      Look look, Browser browser, Shop shop) {
    browser.look(look);
    for (String page : List.of("/", "/?from=" + Shop.seed("03"))) {
      browser.open(page);
      browser.keepWindow("first-minute-" + (page.length() == 1 ? "blank-" : "bad-") + look.name());
      assertThat(inView(browser, browser.one(".bar .word"))).as("verdict").isTrue();
      assertThat(inView(browser, browser.one(".bar .next"))).as("what to do").isTrue();
      assertThat(inView(browser, browser.one(".bar > button"))).as("button").isTrue();
      browser.ask("window.scrollTo(0, 1500)");
      assertThat(inView(browser, browser.one(".bar .word"))).as("verdict, scrolled").isTrue();
    }
    browser.open("/assessments/" + shop.assessed(Shop.seed("03")));
    browser.until(b -> !b.all("#first-fix form button").isEmpty());
    browser.keepWindow("first-minute-answer-" + look.name());
    assertThat(inView(browser, browser.one("#verdict"))).isTrue();
    assertThat(inView(browser, browser.one("#first-fix form button"))).isTrue();
    browser.leaving(() -> browser.one("#first-fix form button").click());
    assertThat(browser.text("#live")).contains("Compared with the set-up you started from");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("looks")
  void noLetterOfADrawingIsTooSmallToRead(Look look, Browser browser, Shop shop) {
    browser.look(look);
    String answer = "/assessments/" + shop.assessed(Shop.seed("03"));
    for (String page : List.of("/", "/?from=" + Shop.seed("01"), answer, answer + "/plots")) {
      browser.open(page);
      // A page may fetch its drawing by itself.
      browser.until(b -> b.ask(LETTERS) != null);
      double least = browser.<Number>ask(LETTERS).doubleValue();
      assertThat(least).as("%s, %s", page, look.name()).isGreaterThanOrEqualTo(LEAST_LETTER);
    }
  }

  @Test
  void noFieldWithTheFocusIsHiddenUnderTheBar(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    for (Look look : List.of(Look.WIDE, Look.NARROW)) {
      browser.look(look);
      assertThat(browser.<List<String>>ask(REACHED)).hasSizeGreaterThan(LEAST_REACHED);
      assertThat(browser.<List<String>>ask(HIDDEN, false)).as(look.name() + " down").isEmpty();
      assertThat(browser.<List<String>>ask(HIDDEN, true)).as(look.name() + " up").isEmpty();
    }
  }

  @Test
  void elevenAnswersGiveADrawingFromTheFirstAndAVerdictAtTheLast(Browser browser) {
    browser.open("/");
    browser.type("#f-stock-thickness", "12");
    browser.until(b -> b.text(".sketch").contains("12 mm thick"));
    Map<String, String> typed =
        Map.of(
            "#f-stock-length", "140",
            "#f-stock-height", "70",
            "#f-hold-gripDepth", "8",
            "#f-cut-axialDepth", "2");
    typed.forEach(browser::type);
    browser.pick("#f-stock-material", "1018 cold drawn");
    browser.pick("#f-hold-vise", "ground vise 150");
    browser.pick("#f-machine", "large knee mill");
    browser.pick("#f-cutter", "face mill 63, fresh");
    browser.pick("#f-cut-operation", "top edge");
    browser.pick("#f-cut-feed", "left to right");
    browser.until(b -> b.text("#now").startsWith("So far: do not run"));
    assertThat(browser.text("#live")).contains("Assumed until you enter yours");
    browser.keep("first-minute-verdict-wide");
    browser.press("Use these values");
    browser.until(b -> !value(b, "#f-cut-spindleSpeed").isEmpty());
    assertThat(browser.text("#live")).doesNotContain("Assumed until you enter yours");
    browser.type("#f-job-jobOrder", "J-11");
    browser.leaving(() -> browser.one("#f-job-jobOrder").sendKeys(Keys.ENTER));
    assertThat(browser.text("#verdict")).isEqualTo("Do not run");
  }
}
