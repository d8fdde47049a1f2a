package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The set-up as it stands, drawn and judged anew with every move, by whatever hand moves it. */
@InChromium
class LiveDrawingTest {

  private static final String GRIP = "#f-hold-gripDepth";
  private static final String DEPTH = "#f-cut-axialDepth";
  private static final String MORE_GRIP =
      ".handle[data-path='/hold/gripDepth'] button[id$='-more']";

  @AfterEach
  void scriptAgain(Browser browser) {
    browser.script(true);
  }

  private static double value(Browser browser, String field) {
    return Double.parseDouble(browser.one(field).getAttribute("value"));
  }

  @Test
  void aStepOfTheGripIsDrawnAndJudgedWithoutLeavingThePage(Browser browser) {
    browser.open("/?from=" + Shop.seed("03"));
    double before = value(browser, GRIP);
    String drawn = browser.text("#live figure.end");
    browser.one(MORE_GRIP).click();
    browser.until(b -> value(b, GRIP) > before);
    browser.until(b -> !b.text("#live figure.end").equals(drawn));
    assertThat(browser.text("#live .draft")).contains("of 100").contains("A draft");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
  }

  @Test
  void theArrowKeysStepTheFieldThatIsTypedIn(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    double before = value(browser, DEPTH);
    browser.one(DEPTH).sendKeys(Keys.ARROW_UP);
    browser.until(b -> value(b, DEPTH) > before);
    assertThat(browser.path()).startsWith("/?from=");
  }

  @Test
  void whatIsTypedIsJudgedAndWhatIsMistypedIsToldBesideItsField(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    assertThat(browser.text("#live .word")).startsWith("Run");
    browser.retype(DEPTH, "0.5", "9");
    browser.until(b -> b.text("#live .word").startsWith("Do not run"));
    browser.retype(DEPTH, "9", "9 bananas");
    browser.until(b -> b.text(DEPTH + "-error").startsWith("Wrong:"));
    assertThat(browser.text("#live .word")).isEqualTo("Nothing to judge yet");
    assertThat(browser.one(DEPTH).getAttribute("aria-invalid")).isEqualTo("true");
    browser.keep("setup-mistyped-wide");
  }

  @Test
  void thePlateIsPulledDeeperIntoTheJawsOnItsDrawing(Browser browser) {
    browser.open("/?from=" + Shop.seed("03"));
    double before = value(browser, GRIP);
    WebElement stock = browser.one("[data-view='end'] [data-part='stock']");
    new Actions(browser.driver()).clickAndHold(stock).moveByOffset(0, 30).release().perform();
    browser.until(b -> value(b, GRIP) > before);
  }

  @Test
  void withoutScriptTheStepsAreButtonsOfTheForm(Browser browser) {
    browser.script(false);
    browser.open("/?from=" + Shop.seed("03"));
    double before = value(browser, GRIP);
    browser.leaving(() -> browser.one(MORE_GRIP).click());
    assertThat(value(browser, GRIP)).isGreaterThan(before);
  }

  @Test
  void aChangeIsComparedInItsPlaceOnTheAnswer(Browser browser, Shop shop) {
    browser.open("/assessments/" + shop.assessed(Shop.seed("05")));
    browser.until(b -> !b.all("form[action$='/compare'] button").isEmpty());
    browser.one("form[action$='/compare'] button").click();
    browser.until(b -> b.one(".compared").isDisplayed());
    browser.keep("answer-compared-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
  }
}
