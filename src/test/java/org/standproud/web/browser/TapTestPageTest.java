package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.access.Role;

/** The browser hears a plate of which the note is known. */
@InChromium
@IntegrationTest
class TapTestPageTest {

  private static Shop guarded;

  @BeforeAll
  static void open() {
    guarded = Shop.open(Map.of("standproud.access", "keys"));
  }

  @AfterAll
  static void close() {
    guarded.close();
  }

  private static void assertFound(Browser browser) {
    browser.until(b -> b.one("#found").isDisplayed());
    String[] note = browser.text("#note").split(" ");
    assertThat(Double.parseDouble(note[0])).isBetween(0.98 * TapSound.HZ, TapSound.HZ);
    assertThat(Double.parseDouble(note[2])).isBetween(TapSound.HZ, 1.02 * TapSound.HZ);
    String[] damping = browser.text("#damping").split(" ");
    assertThat(Double.parseDouble(damping[0])).isLessThan(TapSound.ZETA);
    assertThat(Double.parseDouble(damping[2])).isGreaterThan(TapSound.ZETA);
    assertThat(browser.one("#spectrum").isDisplayed()).isTrue();
  }

  @Test
  void theMicrophoneHearsTheNoteForACallerWithAKey(Browser browser) {
    browser.visit(guarded.address());
    browser.open("/tap-test");
    browser.type("#key", guarded.key("M. Swift", Role.CALLER));
    browser.send("Sign in");
    browser.open("/tap-test");
    for (Look look : new Look[] {Look.WIDE, Look.NARROW_DARK}) {
      browser.look(look);
      browser.one("#record").click();
      browser.until(b -> b.text("#state").startsWith("Found"));
      assertFound(browser);
      browser.keep("tap-test-found-" + look.name());
      assertThat(browser.tooWide()).isLessThanOrEqualTo(0);
      assertThat(Accessibility.of(browser).violations()).isEmpty();
    }
  }

  @Test
  void aFileIsReadLikeTheMicrophoneAndABadOneSaysWhatToDo(Browser browser, @TempDir Path folder)
      throws IOException {
    browser.open("/tap-test");
    browser.one("#file").sendKeys(TapSound.FILE.toString());
    assertFound(browser);
    Path text = Files.writeString(folder.resolve("no-sound.wav"), "no sound at all");
    browser.one("#file").sendKeys(text.toString());
    browser.until(b -> b.text("#state").contains("A WAV file is wanted"));
    assertThat(browser.one("#found").isDisplayed()).isFalse();
  }
}
