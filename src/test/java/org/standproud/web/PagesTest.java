package org.standproud.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import jakarta.servlet.http.Cookie;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.standproud.IntegrationTest;
import org.standproud.setup.request.FieldGuide;

/** The pages and the sheet as a browser gets them, over the demonstration shop. */
@SpringBootTest
@AutoConfigureMockMvc
@Import(SentForms.class)
@IntegrationTest
class PagesTest {

  private static final String FINE = "01-top-edge-wire-and-stop";
  private static final String BAD = "03-tall-plate-barely-gripped";
  private static final String INCH = "09-saw-cut-faces-without-packing";
  private static final String UNMEASURED = "12-nobody-measured";

  private static final int DPI = 60;
  private static final double MARGIN_MM = 9;
  private static final double MM_PER_INCH = 25.4;

  private static @TempDir Path directory;

  @Autowired private MockMvc mvc;

  @DynamicPropertySource
  static void records(DynamicPropertyRegistry properties) {
    properties.add("standproud.audit.directory", () -> directory.toString());
  }

  static Stream<String> seeds() {
    return SeedSetups.names().stream();
  }

  private String assessed(String json) throws Exception {
    String location =
        mvc.perform(post("/v1/assessments").contentType(MediaType.APPLICATION_JSON).content(json))
            .andExpect(status().isCreated())
            .andReturn()
            .getResponse()
            .getHeader("Location");
    return location.substring(location.lastIndexOf('/') + 1);
  }

  private String page(String address) throws Exception {
    return mvc.perform(get(java.net.URI.create(address)))
        .andExpect(status().isOk())
        .andReturn()
        .getResponse()
        .getContentAsString();
  }

  /** What stands in the fields of the form, as a browser would send it back. */
  private static Map<String, String> filled(String form) {
    Map<String, String> values = new LinkedHashMap<>();
    Matcher inputs = Pattern.compile("<input ([^>]*)>").matcher(form);
    while (inputs.find()) {
      String name = attribute(inputs.group(1), "name");
      if (name.startsWith("/") || name.startsWith("typed:")) {
        values.put(name, attribute(inputs.group(1), "value"));
      }
    }
    Matcher selects = Pattern.compile("(?s)<select ([^>]*)>(.*?)</select>").matcher(form);
    while (selects.find()) {
      Matcher chosen =
          Pattern.compile("<option value=\"([^\"]*)\" selected").matcher(selects.group(2));
      String name = attribute(selects.group(1), "name");
      if (name.startsWith("/") && chosen.find()) {
        values.put(name, chosen.group(1));
      }
    }
    return values;
  }

  private static String attribute(String tag, String name) {
    Matcher value = Pattern.compile(" ?" + name + "=\"([^\"]*)\"").matcher(tag);
    return value.find() ? value.group(1).replace("&#39;", "'").replace("&quot;", "\"") : "";
  }

  private MockHttpServletResponse sent(Map<String, String> values) throws Exception {
    MockHttpServletRequestBuilder request = post("/").with(csrf());
    values.forEach(request::param);
    return mvc.perform(request).andReturn().getResponse();
  }

  @Test
  void aFineSetUpMayRunAndABadOneMayNotWithTheCautionsOnBoth() throws Exception {
    String fine = page("/assessments/" + assessed(SeedSetups.json(FINE)));
    assertThat(fine)
        .contains("<h1 id=\"verdict\">Run</h1>")
        .contains("sign-run")
        .contains("Keep guards in place");
    String bad = page("/assessments/" + assessed(SeedSetups.json(BAD)));
    assertThat(bad)
        .contains("<h1 id=\"verdict\">Do not run</h1>")
        .contains("sign-do-not-run")
        .contains("Keep guards in place")
        .contains("TLW-0103")
        .contains("data-part=\"push-movable-worst\"")
        .contains("Distance to the limit");
  }

  @Test
  void anAnswerShowsWhatToMeasureWhatWasAssumedAndHowSureEachFindingIs() throws Exception {
    String id = assessed(SeedSetups.json(UNMEASURED));
    String answer = page("/assessments/" + id);
    assertThat(answer)
        .contains("Measure first")
        .contains("Assumed")
        .contains("/hold/jawFriction")
        .contains("inputs known")
        .contains("<dt>Measure</dt>")
        .contains(id)
        .contains("href=\"/v1/assessments/" + id + "\"")
        .contains("/assessments/" + id + "/sheet.pdf?paper=a4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/rules", "/?from=" + FINE})
  void noPageHasScriptOrStyleInIt(String address) throws Exception {
    MockHttpServletResponse response = mvc.perform(get(address)).andReturn().getResponse();
    assertThat(response.getHeader("Content-Security-Policy"))
        .contains("default-src 'none'")
        .contains("script-src 'self';")
        .doesNotContain("unsafe");
    assertThat(response.getContentAsString().replaceAll("<script src=\"/[^\"]*\" defer=", ""))
        .doesNotContain("<script")
        .doesNotContain("<style")
        .doesNotContain(" style=")
        .doesNotContain(" onclick");
  }

  @Test
  void namesFromOutsideStayText() throws Exception {
    String hostile = "<script>alert('x')</script>\\\"><img src=x>\uFFFE";
    String id = assessed(SeedSetups.json(FINE).replace("TLW-0101", hostile));
    String answer = page("/assessments/" + id);
    assertThat(answer).doesNotContain("<script>").doesNotContain("<img").contains("&lt;script&gt;");
    try (PDDocument sheet = sheet(id, "a4")) {
      assertThat(new PDFTextStripper().getText(sheet)).contains("<script>");
    }
    String again = page("/?from=" + id);
    assertThat(again).doesNotContain("<script>").doesNotContain("<img");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aSetUpSentFromItsFormIsAnsweredAsThroughTheApi(String name) throws Exception {
    String form = page("/?from=" + name);
    MockHttpServletResponse response = sent(filled(form));
    assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(303);
    String byPage = response.getRedirectedUrl();
    assertThat(numbers(byPage))
        .isEqualTo(numbers("/assessments/" + assessed(SeedSetups.json(name))));
  }

  /** Everything of an answer but its identity and its time. */
  private String numbers(String page) throws Exception {
    String id = page.substring(page.lastIndexOf('/') + 1);
    return page("/v1" + page).replace(id, "").replaceAll("\"time\":\"[^\"]*\"", "");
  }

  @Test
  void aChangeThatWouldPutItRightCanBeComparedAndOpenedInTheForm() throws Exception {
    String id = assessed(SeedSetups.json(BAD));
    String remedies = page("/assessments/" + id + "/remedies");
    assertThat(remedies).contains("How to fix it").contains("Use this");
    Matcher offered = Pattern.compile("name=\"request\" value=\"([^\"]*)\"").matcher(remedies);
    assertThat(offered.find()).isTrue();
    String request = offered.group(1).replace("&quot;", "\"");
    String compared =
        mvc.perform(post("/assessments/" + id + "/compare").with(csrf()).param("request", request))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(compared).contains("do not run").contains("gone").contains("limit");
    String opened =
        mvc.perform(post("/").with(csrf()).param("request", request).param("before", id))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(opened)
        .contains("name=\"before\" value=\"" + id + "\"")
        .contains("Compared with the set-up you started from")
        .contains("class=\"was\"")
        .contains("href=\"/?from=" + id + "\">Undo the changes");
    Map<String, String> form = filled(opened);
    form.put("before", id);
    assertThat(sent(form).getStatus()).isEqualTo(303);
  }

  @ParameterizedTest
  @ValueSource(strings = {"other-holds", "questions", "plots", "plan", "plan?remove=2"})
  void recommendationsHaveTheirOwnPageAndAFragmentForTheAnswerPage(String part) throws Exception {
    String address = "/assessments/" + assessed(SeedSetups.json(FINE)) + "/" + part;
    assertThat(page(address)).contains("Back to the answer").contains("<html");
    String inPlace =
        mvc.perform(get(java.net.URI.create(address)).header("HX-Request", "true"))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(inPlace).doesNotContain("<html").doesNotContain("Back to the answer");
  }

  @Test
  void aFormInTheOtherUnitsDescribesTheSameSetUp() throws Exception {
    Map<String, String> metric = filled(page("/?from=" + FINE));
    metric.put("convert", "inch");
    MockHttpServletResponse response = sent(metric);
    assertThat(response.getStatus()).isEqualTo(200);
    Map<String, String> inch = filled(response.getContentAsString());
    assertThat(inch.get("/units")).isEqualTo("inch");
    assertThat(Double.parseDouble(inch.get("/stock/length"))).isCloseTo(140 / 25.4, within(1e-5));
    assertThat(inch.get("/machine")).isEqualTo("large knee mill");
    String byPage = sent(inch).getRedirectedUrl();
    String stock = page("/v1" + byPage + "/evidence");
    assertThat(stock).isNotBlank();
    inch.put("convert", "metric");
    Map<String, String> back = filled(sent(inch).getContentAsString());
    metric.remove("convert");
    assertThat(back).as("there and back").isEqualTo(metric);
    assertThat(filled(page("/?from=" + INCH)).get("/stock/thickness")).isEqualTo("0.625");
  }

  @Test
  void anEmptyFormIsShownInOtherUnitsTooAndTheChoiceIsKept() throws Exception {
    MockHttpServletResponse response = sent(Map.of("/units", "metric", "convert", "inch"));
    assertThat(response.getStatus()).isEqualTo(200);
    assertThat(response.getContentAsString()).contains("name=\"/units\" value=\"inch\"");
    assertThat(response.getHeader("Set-Cookie")).contains("units=inch").contains("HttpOnly");
    String next =
        mvc.perform(get("/").cookie(new Cookie("units", "inch")))
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(next).contains("name=\"/units\" value=\"inch\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/draft"})
  void aFormThatSaysNothingOfItsUnitsIsReadAsMetric(String address) throws Exception {
    for (String button : new String[] {"none", "draft", "convert", "step", "assume"}) {
      MockHttpServletRequestBuilder request =
          post(address).with(csrf()).param("/stock/length", "140").param("/hold/gripDepth", "40");
      request.param(button, button.equals("convert") ? "inch" : "/hold/gripDepth +");
      assertThat(mvc.perform(request).andReturn().getResponse().getStatus())
          .as("%s, %s", address, button)
          .isLessThan(500);
    }
  }

  /** Enter presses the first button that belongs to a form, wherever it stands in the page. */
  @Test
  void theFirstButtonOfTheFormChecksTheSetUp() throws Exception {
    String form = page("/?from=" + FINE);
    String first =
        form.substring(form.indexOf("<form class=\"setup\""))
            .replaceAll("(?s)^.*?(<button[^>]*>[^<]*</button>).*$", "$1");
    assertThat(first).isEqualTo("<button>Check this set-up</button>");
  }

  @Test
  void everyWayInWhichShopsWriteNumbersIsReadFromTheForm() throws Exception {
    Map<String, String> values = filled(page("/?from=" + FINE));
    values.put("/stock/thickness", "3/4\"");
    values.put("/hold/clampingForce", "25–35 kN");
    values.put("/cut/spindleSpeed", "820 rev/min");
    values.put("/cut/axialDepth", ",5");
    assertThat(sent(values).getStatus()).isEqualTo(303);
    values.remove("/hold/clampingForce");
    values.put("/hold/handleTorque", "60 N·m");
    assertThat(sent(values).getStatus()).isEqualTo(303);
    values.put("/stock/length", "1,200");
    MockHttpServletResponse refused = sent(values);
    assertThat(refused.getStatus()).isEqualTo(422);
    assertThat(refused.getContentAsString()).contains("1,200 could be 1200 or 1.200");
  }

  @Test
  void elevenAnswersAreEnoughForADraftAndWhatItAssumesIsSaidAndNeverShownAsAGoAhead()
      throws Exception {
    Map<String, String> all = filled(page("/?from=" + FINE));
    Map<String, String> first = new LinkedHashMap<>(Map.of("/units", "metric", "draft", "yes"));
    for (FieldGuide.Step step : FieldGuide.Step.values()) {
      for (String path : FieldGuide.first(step)) {
        if (!path.equals("/hold/clampingForce") && all.getOrDefault(path, "").length() > 0) {
          first.put(path, all.get(path));
        }
      }
    }
    assertThat(first).hasSizeLessThanOrEqualTo(13);
    String page = sent(first).getContentAsString();
    assertThat(page)
        .contains("Assumed until you enter yours")
        .contains("Spindle speed:")
        .contains("data-part=\"fixed-jaw\"")
        .doesNotContain("sign sign-run\"");
    first.remove("draft");
    MockHttpServletResponse refused = sent(first);
    assertThat(refused.getStatus()).as("assumed values go on no record").isEqualTo(422);
    first.put("assume", "yes");
    Map<String, String> taken = filled(sent(first).getContentAsString());
    taken.put("/job/jobOrder", "J-1");
    assertThat(sent(taken).getStatus()).isEqualTo(303);
  }

  @Test
  void theFirstNumberIsDrawnAndWhatIsNotKnownIsDrawnAsNotKnown() throws Exception {
    Map<String, String> values =
        new LinkedHashMap<>(Map.of("/units", "metric", "draft", "yes", "/stock/thickness", "12"));
    String page = sent(values).getContentAsString();
    assertThat(page).contains("12 mm thick").contains("? grip").contains("? high");
    assertThat(page).containsPattern("class=\"i-ghost\"[^>]*data-part=\"fixed-jaw\"");
    values.put("/hold/vise", "ground vise 150");
    assertThat(sent(values).getContentAsString())
        .containsPattern("class=\"i-vise\"[^>]*data-part=\"fixed-jaw\"");
  }

  @Test
  void anAnswerThatCouldNotBeGivenHasNoScore() throws Exception {
    String absurd =
        SeedSetups.json(FINE).replaceFirst("\"viseRunOut\": *[^,}]+", "\"viseRunOut\": 10");
    String open = page("/assessments/" + assessed(absurd));
    assertThat(open).doesNotContain("Score by area");
    assertThat(page("/assessments/" + assessed(SeedSetups.json(FINE)))).contains("Score by area");
  }

  @Test
  void anErrorIsShownBesideItsFieldAndNothingIsJudged() throws Exception {
    Map<String, String> values = filled(page("/?from=" + FINE));
    values.put("/stock/length", "1,400");
    values.put("/hold/gripDepth", "");
    values.put("/cut/axialDepth", "90000 mm");
    MockHttpServletResponse response = sent(values);
    assertThat(response.getStatus()).isEqualTo(422);
    String form = response.getContentAsString();
    assertThat(form)
        .contains("id=\"f-stock-length-error\"")
        .contains("id=\"f-hold-gripDepth-error\"")
        .contains("id=\"f-cut-axialDepth-error\"")
        .contains("href=\"#f-stock-length\"")
        .contains("value=\"1,400\"")
        .contains("aria-invalid=\"true\"");
  }

  @Test
  void aFormFromAnotherSiteIsRefused() throws Exception {
    Map<String, String> values = filled(page("/?from=" + FINE));
    MockHttpServletRequestBuilder crossSite = post("/").header("Sec-Fetch-Site", "cross-site");
    values.forEach(crossSite::param);
    mvc.perform(crossSite).andExpect(status().isForbidden());
    MockHttpServletRequestBuilder origin =
        post("/").header("Host", "localhost:8080").header("Origin", "http://evil.example");
    values.forEach(origin::param);
    mvc.perform(origin).andExpect(status().isForbidden());
    MockHttpServletRequestBuilder own =
        post("/")
            .with(csrf())
            .header("Host", "localhost:8080")
            .header("Origin", "http://localhost:8080");
    values.forEach(own::param);
    mvc.perform(own).andExpect(status().isSeeOther());
  }

  @Test
  void rulesAreFoundByWordsAndByWhatTheyProtect() throws Exception {
    assertThat(page("/rules?protects=direction")).contains("DIR-001").doesNotContain("HOLD-001");
    assertThat(page("/rules?q=fixed%20jaw%20load")).contains("DIR-001");
    assertThat(page("/rules?q=zeppelin")).contains("No rule found.");
    assertThat(page("/rules/DIR-001"))
        .contains("The fixed jaw should take the load of the cut")
        .contains("load jaw")
        .contains("Limits you can change")
        .contains("Examples")
        .contains("push to the fixed jaw");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/rules/HOLD-999",
        "/assessments/not-an-id",
        "/assessments/0197f3c2-7b1e-7c44-9d0a-3f6b2a1c5e77",
        "/assessments/0197f3c2-7b1e-7c44-9d0a-3f6b2a1c5e77/sheet.pdf",
        "/?from=..%2F..%2Fcutters"
      })
  void anUnknownAddressShowsAPage(String address) throws Exception {
    MockHttpServletResponse response =
        mvc.perform(get(java.net.URI.create(address)))
            .andExpect(status().isNotFound())
            .andReturn()
            .getResponse();
    assertThat(response.getContentType()).startsWith("text/html");
    assertThat(response.getContentAsString()).contains("<h1>Not here</h1>");
  }

  private PDDocument sheet(String id, String paper) throws Exception {
    byte[] pdf =
        mvc.perform(get("/assessments/" + id + "/sheet.pdf").param("paper", paper))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsByteArray();
    return Loader.loadPDF(pdf);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everySheetHasOneOrTwoPagesWithAllFontsInsideAndAllFindingsOnThePaper(String name)
      throws Exception {
    String id = assessed(SeedSetups.json(name));
    Matcher cards =
        Pattern.compile("\"card\":\"([A-Z]+-[0-9]+)\"").matcher(page("/v1/assessments/" + id));
    try (PDDocument sheet = sheet(id, name.startsWith("0") ? "a4" : "letter")) {
      assertThat(sheet.getNumberOfPages()).isBetween(1, 2);
      for (PDPage page : sheet.getPages()) {
        for (COSName font : page.getResources().getFontNames()) {
          PDFont used = page.getResources().getFont(font);
          assertThat(used.isEmbedded()).as(used.getName()).isTrue();
        }
        assertThat(page.getResources().getXObjectNames())
            .as("no picture made of dots")
            .noneMatch(x -> page.getResources().isImageXObject(x));
      }
      Inside words = new Inside(sheet);
      String text = words.getText(sheet);
      assertThat(words.outside).isZero();
      assertThat(text)
          .contains(id)
          .contains("Grip depth")
          .contains("Before the spindle starts")
          .contains("Keep guards in place")
          .contains(SeedSetups.setup(name).job().jobOrder())
          .contains("Rules ");
      String line = text.replaceAll("\\s+", " ").replace("- ", "-");
      while (cards.find()) {
        assertThat(line).contains(cards.group(1));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {FINE, BAD, INCH, UNMEASURED})
  void theMarginsOfAPrintedSheetAreWhiteButForItsFoot(String name) throws Exception {
    try (PDDocument sheet = sheet(assessed(SeedSetups.json(name)), "a4")) {
      for (int p = 0; p < sheet.getNumberOfPages(); p++) {
        BufferedImage image = new PDFRenderer(sheet).renderImageWithDPI(p, DPI);
        int margin = (int) (MARGIN_MM / MM_PER_INCH * DPI);
        assertThat(ink(image, 0, 0, image.getWidth(), margin)).as("above").isZero();
        assertThat(ink(image, 0, 0, margin, image.getHeight())).as("left").isZero();
        assertThat(ink(image, image.getWidth() - margin, 0, margin, image.getHeight()))
            .as("right")
            .isZero();
      }
    }
  }

  private static int ink(BufferedImage image, int x, int y, int width, int height) {
    int dots = 0;
    for (int rgb : image.getRGB(x, y, width, height, null, 0, width)) {
      dots += (rgb & 0xFFFFFF) == 0xFFFFFF ? 0 : 1;
    }
    return dots;
  }

  @Test
  void aSheetWithLongNamesStillHasTwoPagesAndNothingRunsOffThem() throws Exception {
    String job = "W".repeat(80);
    String id = assessed(SeedSetups.json(UNMEASURED).replace("TLW-0112", job));
    try (PDDocument sheet = sheet(id, "letter")) {
      assertThat(sheet.getNumberOfPages()).isLessThanOrEqualTo(2);
      Inside words = new Inside(sheet);
      assertThat(words.getText(sheet).chars().filter(c -> c == 'W').count())
          .isGreaterThanOrEqualTo(job.length());
      assertThat(words.outside).isZero();
    }
  }

  @Test
  void aSheetOfWhatMustNotRunSaysSoOverItsNumbers() throws Exception {
    try (PDDocument sheet = sheet(assessed(SeedSetups.json(BAD)), "a4")) {
      assertThat(new PDFTextStripper().getText(sheet))
          .contains("do not run it like this")
          .contains("Fix first:")
          .doesNotContain("Set this");
    }
    try (PDDocument sheet = sheet(assessed(SeedSetups.json(FINE)), "a4")) {
      assertThat(new PDFTextStripper().getText(sheet)).contains("Set this").contains("Set by");
    }
  }

  @Test
  void theCodeOnTheSheetReadsAsTheRecordIdAndLetterPaperIsLetter() throws Exception {
    String id = assessed(SeedSetups.json(INCH));
    try (PDDocument sheet = sheet(id, "letter")) {
      assertThat(sheet.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
      assertThat(sheet.getPage(0).getMediaBox().getHeight()).isEqualTo(792);
      BufferedImage image = new PDFRenderer(sheet).renderImageWithDPI(0, 200);
      int wide = image.getWidth();
      int high = image.getHeight() / 5;
      int[] dots = image.getRGB(0, 0, wide, high, null, 0, wide);
      BinaryBitmap bitmap =
          new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(wide, high, dots)));
      assertThat(new QRCodeReader().decode(bitmap).getText()).isEqualTo(id);
      assertThat(new PDFTextStripper().getText(sheet)).contains("lbf").doesNotContain(" mm");
    }
  }

  @Test
  void aSheetHasOneSetOfNumbers() throws Exception {
    String id = assessed(SeedSetups.json(FINE));
    String alone = sheetText(id, null);
    assertThat(alone).containsPattern("Depth of cut \\(ap\\) ?0.5 mm").doesNotContain("Pass plan");
    String planned = sheetText(id, "1.5");
    assertThat(planned)
        .contains("Pass plan, to take off 1.5 mm")
        .containsPattern("Depth of cut \\(ap\\) ?see the pass plan")
        .doesNotContainPattern("Depth of cut \\(ap\\) ?0.5 mm");
  }

  private String sheetText(String id, @Nullable String remove) throws Exception {
    MockHttpServletRequestBuilder request = get("/assessments/" + id + "/sheet.pdf");
    if (remove != null) {
      request.param("remove", remove);
    }
    byte[] pdf = mvc.perform(request).andReturn().getResponse().getContentAsByteArray();
    try (PDDocument sheet = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(sheet).replaceAll("\\s+", " ");
    }
  }

  /** Counts the letters that stand off the paper. */
  private static final class Inside extends PDFTextStripper {

    private final float width;
    private final float height;
    private int outside;

    Inside(PDDocument sheet) throws java.io.IOException {
      width = sheet.getPage(0).getMediaBox().getWidth();
      height = sheet.getPage(0).getMediaBox().getHeight();
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      boolean inside =
          text.getX() >= 0
              && text.getX() + text.getWidth() <= width
              && text.getY() >= 0
              && text.getY() <= height;
      outside += inside ? 0 : 1;
      super.processTextPosition(text);
    }
  }
}
