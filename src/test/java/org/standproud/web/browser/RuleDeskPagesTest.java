package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.standproud.IntegrationTest;

/** What a rule author does with cards, from reading one to rolling back. */
@InChromium
@IntegrationTest
class RuleDeskPagesTest {

  private static final String CARD = "/rules/HOLD-001/edit";

  @AfterEach
  void scriptAgain(Browser browser) {
    browser.script(true);
  }

  @Test
  void aCardIsCheckedAsItIsTypedByLineAndColumn(Browser browser) {
    browser.open(CARD);
    assertThat(browser.text("#check .gate")).isEqualTo("Checks passed");
    browser.retype("#text", "  - tall plate", "  - tall plato");
    browser.until(b -> b.text("#check .gate").contains("error"));
    assertThat(browser.text(".errors li"))
        .contains("line 11, column 5")
        .contains("Did you mean tall plate?");
    assertThat(browser.text(".errors mark")).isEqualTo("tall plato");
    browser.keep("rule-edit-wrong-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
    browser.retype("#text", "  - tall plato", "  - tall plate");
    browser.until(b -> b.text("#check .gate").equals("Checks passed"));
  }

  @Test
  void withoutScriptTheSameIsSaidAfterPressingCheck(Browser browser) {
    browser.script(false);
    browser.open(CARD);
    String card = browser.one("#text").getAttribute("value");
    browser.type("#text", card.replace("severity: caution", "severity: grave"));
    browser.send("Check");
    assertThat(browser.text("#check .gate")).isEqualTo("One error");
    assertThat(browser.text(".errors li")).contains("line 3, column 11");
    assertThat(browser.one("#text").getAttribute("value")).contains("severity: grave");
  }

  @Test
  void aCardIsTriedOnASetUpOrARecordBesideThoseInService(Browser browser, Shop shop) {
    browser.open(CARD);
    browser.retype("#text", "severity: caution", "severity: note");
    browser.pick("#on", Shop.seed("03"));
    browser.press("Try");
    browser.until(b -> b.text("#tried").contains("Tried on " + Shop.seed("03")));
    assertThat(browser.text("#tried"))
        .contains("HOLD-001\nis caution, fail")
        .contains("would be note, fail")
        .contains("tall plate");
    browser.until(b -> b.text("#check .differs").contains("is note"));
    assertThat(browser.text("#check .differs")).contains("was caution");
    browser.keep("rule-edit-tried-wide");
    browser.type("#record", shop.assessed(Shop.seed("01")));
    browser.press("Try");
    browser.until(b -> b.text("#tried").contains("Tried on the record"));
    assertThat(browser.text("#tried")).contains("No finding changes.");
  }

  @Test
  void pastJobsAreJudgedAgainWhileTheAuthorLooksOn(Browser browser, Shop shop) {
    shop.assessed(Shop.seed("01"));
    browser.open(CARD);
    browser.retype("#text", "severity: caution", "severity: note");
    browser.press("Check past jobs again");
    browser.until(b -> b.text("#impact").contains("What would change for past jobs"));
    assertThat(browser.text("#impact")).contains("past jobs");
    browser.keep("rule-edit-impact-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
  }

  @Test
  void aCardIsPublishedWithANameAndAReasonAndRolledBack(Browser browser) {
    browser.open("/rules/FIN-001/edit");
    browser.retype("#text", "owner: tool room", "owner: <i>grinding</i> room");
    browser.send("Publish");
    assertThat(browser.text("#note-error")).isEqualTo("Enter the reason");
    browser.type("#author", "R. Reed");
    browser.type("#note", "The grinding room looks after finish");
    browser.send("Publish");
    assertThat(browser.text("h1")).isEqualTo("The grinding room looks after finish");
    assertThat(browser.words()).contains("Live.").contains("is <i>grinding</i> room");
    browser.open("/rules/FIN-001");
    assertThat(browser.words()).contains("Owner: <i>grinding</i> room");
    browser.open("/rules/history");
    browser.keep("rule-history-two-wide");
    browser.leaving(
        () -> browser.driver().findElement(By.cssSelector("tbody tr:nth-child(2) a")).click());
    assertThat(browser.words()).contains("Not live.");
    browser.type("#author", "R. Reed");
    browser.type("#note", "Back to the tool room");
    browser.send("Restore this version");
    assertThat(browser.words()).contains("Live.").contains("is tool room");
  }

  @Test
  void aProposalWaitsWithWhatItChangesAndIsLetGo(Browser browser) {
    browser.open("/rules/FIN-002/edit");
    browser.retype("#text", "owner: tool room", "owner: grinding room");
    browser.type("#author", "R. Reed");
    browser.type("#note", "To be talked over");
    browser.send("Propose");
    assertThat(browser.words()).contains("is pending; the live rules have not changed");
    browser.keep("rule-proposal-wide");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
    browser.send("Check past jobs again");
    browser.until(b -> b.text("#impact").contains("What would change for past jobs"));
    browser.open("/rules/proposals");
    browser.follow("To be talked over");
    browser.send("Discard");
    assertThat(browser.words()).contains("Nothing is pending.");
  }

  @Test
  void aFormWithoutItsTokenIsRefused(Browser browser) {
    browser.open(CARD);
    browser.driver().executeScript("document.querySelector('#card [name=_csrf]').remove()");
    browser.script(false);
    browser.leaving(() -> browser.one("button[formaction='/rules/publication']").click());
    assertThat(browser.text("h1")).isEqualTo("You may not do this");
  }
}
