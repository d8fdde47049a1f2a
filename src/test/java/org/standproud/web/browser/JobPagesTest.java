package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.standproud.IntegrationTest;
import tools.jackson.databind.json.JsonMapper;

/** A whole job on a page, from the form to the route card. */
@InChromium
@IntegrationTest
class JobPagesTest {

  /** A bright drawn plate of which only the long edges are milled. */
  static final String EDGES =
      "%2Funits=metric&%2Fblank%2Fmaterial=mild+steel&%2Fblank%2Flength=120"
          + "&%2Fblank%2Fthickness=18&%2Fblank%2Fheight=70&%2Fblank%2Fsurface=bright+drawn"
          + "&%2Fblank%2Fedges=sawn&%2Ffinished%2Flength=120&%2Ffinished%2Fthickness=18"
          + "&%2Ffinished%2Fheight=67&%2Ffinished%2FheightTolerance=0.05&%2Fmachine=knee+mill"
          + "&%2Fshelf%2Fvises=6+inch+vise&%2Fshelf%2Fcutters=2+inch+face+mill%2C+carbide";

  @Test
  void theRiskiestPassIsNamedFirstAndEverySetUpHasItsDrawing(Browser browser) {
    browser.open("/jobs/route?" + EDGES);
    for (Look look : new Look[] {Look.WIDE, Look.TABLET, Look.NARROW}) {
      browser.look(look);
      browser.keep("job-route-" + look.name());
      assertThat(browser.tooWide()).as(look.name()).isLessThanOrEqualTo(0);
      assertThat(browser.text("#riskiest")).startsWith("Riskiest: pass ");
      WebElement riskiest = browser.one("#riskiest");
      assertThat(riskiest.getLocation().getY() + riskiest.getSize().getHeight())
          .as("in view for " + look.name())
          .isLessThan(look.height());
    }
    int cards = browser.one("main").findElements(By.cssSelector(".route-card")).size();
    assertThat(cards).isEqualTo(2);
    assertThat(browser.one("main").findElements(By.cssSelector(".route-card svg.drawing")))
        .hasSize(cards);
    assertThat(browser.text("main")).contains("Spring pass", "Go-ahead", "Stop the spindle");
  }

  @Test
  void whatIsMissingIsNamedAtItsFieldAndWhatWasTypedStays(Browser browser) {
    browser.open("/jobs");
    browser.type("#j-blank-length", "120");
    browser.send("Plan the job");
    assertThat(browser.text(".faults")).contains("Material", "Height");
    assertThat(browser.one("#j-blank-length").getAttribute("value")).isEqualTo("120");
  }

  @Test
  void theExampleOfThePageIsTheDemonstrationJob() throws Exception {
    JsonMapper json = JsonMapper.shared();
    assertThat(
            json.readTree(
                Files.readString(Path.of("src/main/resources/jobs/example.json"))))
        .isEqualTo(
            json.readTree(Files.readString(Path.of("seeds/jobs/01-loom-side-from-blank.json"))));
  }
}
