package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.standproud.IntegrationTest;

/** What an auditor does with the records. */
@InChromium
@IntegrationTest
class RecordPagesTest {

  private static String today(int days) {
    return LocalDate.now(ZoneOffset.UTC).plusDays(days).toString();
  }

  @Test
  void recordsAreFoundByJobOrderRuleVerdictAndDay(Browser browser, Shop shop) {
    shop.assessed(Shop.seed("01"));
    shop.assessed(Shop.seed("03"));
    browser.open("/records");
    browser.type("#jobOrder", "TLW-0103");
    browser.type("#card", "HOLD-001");
    browser.pick("#severity", "caution");
    browser.pick("#verdict", "do not run");
    browser.day("#from", today(-1));
    browser.day("#until", today(1));
    browser.send("Find");
    assertThat(browser.all("tbody tr")).isNotEmpty();
    assertThat(browser.all("tbody th a").stream().map(WebElement::getText))
        .containsOnly("TLW-0103");
    assertThat(browser.one("#card").getAttribute("value")).isEqualTo("HOLD-001");
    String table = browser.one("a[href^='/records/all.csv']").getAttribute("href");
    assertThat(shop.get(table.substring(shop.address().length())).body())
        .startsWith("id,time,")
        .contains("TLW-0103")
        .doesNotContain("TLW-0101");
    browser.day("#from", today(1));
    browser.day("#until", "");
    browser.send("Find");
    assertThat(browser.words()).contains("No record matches.");
  }

  @Test
  void aRecordShowsWhyEveryCardFiredOrPassed(Browser browser, Shop shop) {
    browser.open("/records/" + shop.assessed(Shop.seed("03")));
    assertThat(browser.text("#what")).isEqualTo("TLW-0103");
    assertThat(browser.words()).contains("flag it").contains(" passed");
    for (WebElement group : browser.all(".group:not([open]) > summary")) {
      group.click();
    }
    assertThat(browser.words())
        .contains("Not true:")
        .contains("A tall plate with little reserve against tipping rolls over the jaw");
    browser.one("#numbers + details summary").click();
    assertThat(browser.text("#numbers + details")).contains("grip depth 8 mm");
  }

  @Test
  void theProofIsTheChainAndTheSameAnswerByteForByte(Browser browser, Shop shop) {
    String id = shop.assessed(Shop.seed("03"));
    browser.open("/records/" + id);
    browser.send("Replay");
    assertThat(browser.text("#again-h")).isEqualTo("Same answer, byte for byte");
    browser.send("Check with today’s rules");
    assertThat(browser.text("#again-h")).isEqualTo("Today’s rules say the same");
    browser.send("Check the record chain");
    assertThat(browser.text("#found")).isEqualTo("Intact");
    assertThat(browser.words()).contains("is one of them.");
  }

  @Test
  void aFindingIsSignedOffStaysAndTheAcceptanceIsWithdrawn(Browser browser, Shop shop) {
    String id = shop.assessed(Shop.seed("03"));
    browser.open("/records/" + id);
    browser.one("#decided-HOLD-001 details summary").click();
    browser.type("#name-HOLD-001", "R. Reed");
    browser.leaving(() -> browser.one("#decided-HOLD-001 .go button").click());
    assertThat(browser.text("#reason-HOLD-001-error")).isEqualTo("Enter your reason");
    assertThat(browser.one("#expires-HOLD-001").getAttribute("aria-invalid")).isEqualTo("true");
    assertThat(browser.one("#name-HOLD-001").getAttribute("value")).isEqualTo("R. Reed");
    browser.keep("record-decision-faults-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
    browser.type("#reason-HOLD-001", "a clamp stands on the other end <b>too</b>");
    browser.type("#role-HOLD-001", "foreman");
    browser.day("#expires-HOLD-001", today(30));
    browser.leaving(() -> browser.one("#decided-HOLD-001 .go button").click());
    assertThat(browser.text("#decided-HOLD-001 .accepted"))
        .startsWith("in force: R. Reed, foreman, signed off until")
        .contains("<b>too</b>");
    assertThat(browser.text("#decided-HOLD-001 .tag")).startsWith("caution, flags it");
    assertThat(browser.text(".verdict .summary")).contains("do not run");
    browser.one("#decided-HOLD-001 .accepted summary").click();
    WebElement back = browser.one("#decided-HOLD-001 .accepted form");
    back.findElement(By.name("reason")).sendKeys("the clamp is gone");
    back.findElement(By.name("name")).sendKeys("R. Reed");
    back.findElement(By.name("role")).sendKeys("foreman");
    browser.leaving(back::submit);
    assertThat(browser.text("#decided-HOLD-001 .accepted"))
        .startsWith("withdrawn:")
        .contains("the clamp is gone");
  }
}
