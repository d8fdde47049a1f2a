package org.standproud.assessment.recommendation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standproud.AtOnce;
import org.standproud.advice.DemoShop;
import org.standproud.advice.remedy.Remedies;
import org.standproud.setup.Setup;

/** Remedies that were asked for lately. */
class RecentRemediesTest {

  @Test
  void remediesAreSearchedOnceForAllWhoAskAtOnce() throws Exception {
    Setup setup = DemoShop.setup("01");
    RecentRemedies recent = new RecentRemedies();
    assertThat(AtOnce.answers(() -> recent.of(setup, DemoShop.CARDS, DemoShop.CATALOGUE)))
        .hasSize(1);
  }

  @Test
  void anotherSetUpHasRemediesOfItsOwn() {
    RecentRemedies recent = new RecentRemedies();
    Remedies one = recent.of(DemoShop.setup("01"), DemoShop.CARDS, DemoShop.CATALOGUE);
    Remedies other = recent.of(DemoShop.setup("04"), DemoShop.CARDS, DemoShop.CATALOGUE);
    assertThat(other).isNotEqualTo(one);
  }
}
