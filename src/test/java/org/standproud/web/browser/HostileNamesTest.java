package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;
import org.standproud.web.SeedSetups;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Hostile names stay names. */
@InChromium
@IntegrationTest
class HostileNamesTest {

  /** The three names of a job. */
  record Names(String jobOrder, String workMaster, String operation) {}

  static Stream<Names> names() {
    return Stream.of(
        new Names(
            "<script>document.title='taken'</script>",
            "\"><img src=x onerror=\"document.title='taken'\">",
            "</svg></title><svg onload=\"document.title='taken'\">"),
        new Names(
            "${7*7} [[${7*7}]] __${7*7}__ #{x}",
            "\u202Egnip\u2066 \u05D0\u05D1\u05D2 \u200Babc",
            "\uD83D\uDD27\uD83D\uDC69\uD83C\uDFFD\u200D\uD83C\uDFED 5\u20E3"),
        new Names("W".repeat(80), "\u202E" + "M".repeat(79), "-".repeat(80)));
  }

  private static String hostile(Names names) {
    ObjectNode setup = (ObjectNode) JsonMapper.shared().readTree(SeedSetups.json(Shop.seed("01")));
    ((ObjectNode) setup.get("job"))
        .put("jobOrder", names.jobOrder())
        .put("workMaster", names.workMaster())
        .put("operation", names.operation());
    return setup.toString();
  }

  @ParameterizedTest
  @MethodSource("names")
  void hostileNamesAreReadAsTheyAreWrittenOnEveryPage(Names names, Browser browser, Shop shop) {
    String id = shop.judged(hostile(names));
    browser.look(Look.NARROW_DARK);
    for (String page :
        new String[] {"/assessments/" + id, "/?from=" + id, "/records/" + id, "/records"}) {
      browser.open(page);
      assertThat(browser.driver().getTitle()).isNotEqualTo("taken");
      assertThat(browser.all("script:not([src]), img, [onload], [onerror]")).isEmpty();
      assertThat(browser.tooWide()).as(page).isLessThanOrEqualTo(0);
    }
    browser.open("/?from=" + id);
    assertThat(browser.one("#f-job-jobOrder").getAttribute("value")).isEqualTo(names.jobOrder());
    browser.open("/assessments/" + id);
    String said = browser.ask("document.querySelector('.job b').textContent");
    assertThat(said).isEqualTo(names.jobOrder());
  }
}
