package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standproud.IntegrationTest;
import org.standproud.access.Role;

/** The pages of a shop that asks everybody for a key, and where it takes two to publish a card. */
@InChromium
@IntegrationTest
class SignInPagesTest {

  private static final String CARD = "/rules/FIN-001/edit";
  private static Shop guarded;

  @BeforeAll
  static void open() {
    guarded =
        Shop.open(Map.of("standproud.access", "keys", "standproud.rules.two-persons", "true"));
  }

  @AfterAll
  static void close() {
    guarded.close();
  }

  @BeforeEach
  void visit(Browser browser) {
    browser.visit(guarded.address());
  }

  private static void signIn(Browser browser, String key) {
    browser.type("#key", key);
    browser.send("Sign in");
  }

  @Test
  void oneProposesAndAnotherPublishesEachWithHisOwnKey(Browser browser) {
    browser.open(CARD);
    assertThat(browser.text("h1")).isEqualTo("Sign in");
    browser.keep("sign-in-wide");
    signIn(browser, "standproud_nothing");
    assertThat(browser.words()).contains("This key does not work");
    assertThat(Accessibility.of(browser).violations()).isEmpty();
    signIn(browser, guarded.key("R. Reed", Role.RULE_EDITOR, Role.RULE_PUBLISHER));
    browser.open(CARD);
    assertThat(browser.all("#author")).as("a known caller is not asked for a name").isEmpty();
    browser.retype("#text", "owner: tool room", "owner: grinding room");
    browser.type("#note", "The grinding room looks after finish");
    browser.send("Publish");
    assertThat(browser.words()).contains("Proposed by R. Reed");
    String proposal = browser.path();
    browser.send("Publish");
    assertThat(browser.words()).contains("Someone other than R. Reed has to publish this.");
    browser.send("Sign out");
    browser.open(proposal);
    signIn(browser, guarded.key("B. Lathe", Role.RULE_PUBLISHER));
    browser.open(proposal);
    browser.send("Publish");
    assertThat(browser.words()).contains("Live.").contains("published by B. Lathe");
  }

  @Test
  void anAuditorReadsEverythingAndChangesNothing(Browser browser) {
    browser.open("/records");
    signIn(browser, guarded.key("A. Leger", Role.AUDITOR));
    browser.open("/records/chain");
    assertThat(browser.text("#found")).isEqualTo("Intact");
    browser.open(CARD);
    browser.type("#note", "Not this role");
    browser.send("Propose");
    assertThat(browser.text("h1")).isEqualTo("You may not do this");
  }
}
