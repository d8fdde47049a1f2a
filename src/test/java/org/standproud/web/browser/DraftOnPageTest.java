package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.standproud.IntegrationTest;

/** The set-up as it stands, moved by hand, and a change that is applied. */
@InChromium
@IntegrationTest
class DraftOnPageTest {

  /** What a gloved finger hits, in CSS pixels. */
  private static final int LEAST_TARGET = 44;

  /** What shows and is lower or narrower than that. */
  private static final String SMALL =
      "[...document.querySelectorAll('button, .button, summary, select, input[type=text], nav a')]"
          + ".filter(e => { const r = e.getBoundingClientRect();"
          + " return r.width > 0 && r.height > 0"
          + " && (Math.round(r.width) < arguments[0] || Math.round(r.height) < arguments[0]); })"
          + ".map(e => e.outerHTML)";

  private static String value(Browser browser, String css) {
    return browser.one(css).getAttribute("value");
  }

  private static void shows(Browser browser, String css, String value) {
    browser.until(b -> value(b, css).equals(value));
  }

  @Test
  void aButtonAndAnArrowKeyMoveTheGripAndTheDrawingFollows(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    browser.one("#move-hold-gripDepth-more").click();
    shows(browser, "#f-hold-gripDepth", "41");
    browser.until(b -> b.text("[data-view=end]").contains("41 mm grip"));
    browser.one("#f-hold-gripDepth").sendKeys(Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ARROW_DOWN);
    shows(browser, "#f-hold-gripDepth", "38");
    assertThat(browser.focus().getAttribute("id")).isEqualTo("f-hold-gripDepth");
    browser.until(b -> b.text("[data-view=end]").contains("38 mm grip"));
    browser.keep("draft-moved-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
  }

  @Test
  void draggingTheStockDownGripsItDeeper(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    WebElement stock = browser.one("[data-view=end] [data-part=stock]");
    Dimension size = stock.getSize();
    new Actions(browser.driver())
        .moveToElement(stock, 0, size.getHeight() / 4)
        .clickAndHold()
        .moveByOffset(0, 12)
        .moveByOffset(0, 12)
        .release()
        .perform();
    browser.until(b -> Double.parseDouble(value(b, "#f-hold-gripDepth")) > 40);
  }

  @Test
  void aTypingErrorIsShownBesideItsFieldBeforeAnythingIsSent(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    browser.type("#f-stock-length", "1,400");
    browser.until(b -> b.text("#f-stock-length-error").contains("could be"));
    assertThat(browser.one("#f-stock-length").getAttribute("aria-invalid")).isEqualTo("true");
    assertThat(browser.text("#now")).contains("Not enough to go on yet");
    browser.type("#f-stock-length", "140");
    browser.until(b -> b.text("#f-stock-length-error").isEmpty());
  }

  @Test
  void everythingToPressIsLargeEnoughForAGlove(Browser browser) {
    browser.look(Look.NARROW);
    browser.open("/?from=" + Shop.seed("01"));
    assertThat(browser.<List<String>>ask(SMALL, LEAST_TARGET)).isEmpty();
    assertThat(browser.all("button, .button, summary, select, input[type=text]")).isNotEmpty();
  }

  @Test
  void aRemedyIsComparedAndAppliedWithoutLeavingTheAnswerUnread(Browser browser, Shop shop) {
    browser.open("/assessments/" + shop.assessed(Shop.seed("03")));
    browser.until(b -> !b.all(".offer").isEmpty());
    browser.one(".offer form[hx-post] button").click();
    browser.until(b -> !b.all(".compared").isEmpty());
    assertThat(browser.text(".compared")).contains("do not run").contains("gone");
    browser.keep("answer-compared-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
    browser.leaving(() -> browser.one(".offer form[action='/'] button").click());
    assertThat(browser.text("#live")).contains("Compared with the set-up you started from");
    assertThat(browser.text(".draft")).contains("A draft: nothing is recorded");
  }
}
