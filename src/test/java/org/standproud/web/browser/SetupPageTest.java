package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.standproud.IntegrationTest;

/** Describes a set-up and reads the answer, as a machinist does. */
@InChromium
@IntegrationTest
class SetupPageTest {

  private static final int MOST_TABS = 300;

  private static void fill(Browser browser, String units) {
    browser.pick("#from", Shop.seed("01"));
    browser.send("Load");
    if (units.equals("inch")) {
      browser.press("Switch to inch");
      browser.until(b -> b.one("[name='/units']").getAttribute("value").equals("inch"));
    }
  }

  @Test
  void aSetUpInMillimetresIsJudgedAgainWithAShallowGripAndADeepCut(Browser browser) {
    browser.open("/");
    fill(browser, "metric");
    assertThat(browser.one("#f-stock-length").getAttribute("value")).isEqualTo("140");
    browser.send("Check this set-up");
    assertThat(browser.text("#verdict")).isEqualTo("Run");
    browser.follow("Change this set-up");
    browser.type("#f-hold-gripDepth", "6");
    browser.type("#f-hold-packing-0-depth", "4");
    browser.type("#f-cut-axialDepth", "3");
    browser.send("Check this set-up");
    assertThat(browser.text("#verdict")).isEqualTo("Do not run");
    assertThat(browser.words()).contains("Keep guards in place");
  }

  @Test
  void theSameSetUpInInchesGetsTheSameVerdictInInches(Browser browser) {
    browser.open("/");
    fill(browser, "inch");
    assertThat(browser.one("#f-stock-length").getAttribute("value")).startsWith("5.51");
    browser.send("Check this set-up");
    assertThat(browser.text("#verdict")).isEqualTo("Run");
    browser.one("#numbers + details summary").click();
    assertThat(browser.text(".facts")).contains(" in").contains(" lbf").doesNotContain(" mm");
  }

  @Test
  void whatIsWrongStandsBesideItsFieldAndTheListAtTheTopLeadsThere(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    browser.type("#f-stock-length", "1,400");
    browser.type("#f-hold-gripDepth", "");
    browser.send("Check this set-up");
    assertThat(browser.text("#faults")).isEqualTo("Not enough to go on yet");
    WebElement field = browser.one("#f-stock-length");
    assertThat(field.getAttribute("aria-invalid")).isEqualTo("true");
    assertThat(field.getAttribute("aria-describedby")).contains("f-stock-length-error");
    assertThat(browser.text("#f-stock-length-error")).contains("could be");
    browser.keep("setup-faults-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
    browser.one(".faults a[href='#f-stock-length']").click();
    assertThat(browser.focus().getAttribute("id")).isEqualTo("f-stock-length");
  }

  @Test
  void theWholeWayGoesWithoutAMouse(Browser browser) {
    browser.open("/?from=" + Shop.seed("01"));
    browser.key(Keys.TAB);
    assertThat(browser.focus().getText()).isEqualTo("Skip to the content");
    List<String> unseen = new ArrayList<>();
    for (int i = 0; i < MOST_TABS && !judges(browser.focus()); i++) {
      browser.key(Keys.TAB);
      Map<String, Object> focus = browser.ask(OUTLINE);
      if (!Boolean.TRUE.equals(focus.get("seen"))) {
        unseen.add(String.valueOf(focus.get("what")));
      }
    }
    assertThat(unseen).as("stops at which the focus cannot be seen").isEmpty();
    assertThat(judges(browser.focus())).isTrue();
    browser.keep("setup-focus-wide");
    browser.leaving(() -> browser.key(Keys.ENTER));
    assertThat(browser.text("#verdict")).isEqualTo("Run");
  }

  /** An outline of two pixels or more, inside the window. */
  private static final String OUTLINE =
      "(() => { const e = document.activeElement, s = getComputedStyle(e),"
          + " r = e.getBoundingClientRect();"
          + " return {what: e.outerHTML.slice(0, 120), seen: s.outlineStyle !== 'none'"
          + " && parseFloat(s.outlineWidth) >= 2 && r.bottom > 0 && r.top < innerHeight}; })()";

  private static boolean judges(WebElement element) {
    return element.getText().equals("Check this set-up");
  }
}
