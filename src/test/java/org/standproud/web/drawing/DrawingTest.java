package org.standproud.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.drawing.Ink;
import org.standproud.drawing.Picture;
import org.standproud.drawing.Svg;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.UnitSystem;
import org.standproud.web.SeedSetups;
import org.w3c.dom.Element;

class DrawingTest {

  private static final double ROUNDING = 0.011;

  static Stream<String> seeds() {
    return SeedSetups.names().stream();
  }

  private static Setup fed(String name, FeedDirection feed) {
    String text = feed.words();
    String other = text.equals("+x") ? "-x" : "+x";
    return SeedSetups.read(
        SeedSetups.json(name).replace("\"feed\": \"" + other + "\"", "\"feed\": \"" + text + "\""));
  }

  private static Loads loads(Setup setup) {
    return Loads.of(EvidenceGathering.of(setup));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everySetUpIsDrawnInsideItsSheetWithATitleAndATextForThoseWhoDoNotSee(String name) {
    Setup setup = SeedSetups.setup(name);
    Loads loads = loads(setup);
    for (String svg :
        List.of(
            PlanView.of(setup, "plan"),
            EndView.of(setup, loads, "end"),
            PushView.of(loads, setup.units(), "push"))) {
      Picture picture = new Picture(svg);
      assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity");
      assertThat(picture.elements("title").get(0).getTextContent()).isNotBlank();
      assertThat(picture.elements("desc").get(0).getTextContent()).isNotBlank();
      assertThat(picture.root().getAttribute("role")).isEqualTo("img");
      assertInside(picture);
    }
  }

  private static void assertInside(Picture picture) {
    double wide = Double.parseDouble(picture.root().getAttribute("width"));
    double high = Double.parseDouble(picture.root().getAttribute("height"));
    for (Element rect : picture.elements("rect")) {
      double x = Double.parseDouble(rect.getAttribute("x"));
      double y = Double.parseDouble(rect.getAttribute("y"));
      assertThat(x).as(rect.getAttribute("data-part")).isGreaterThanOrEqualTo(0);
      assertThat(y).as(rect.getAttribute("data-part")).isGreaterThanOrEqualTo(0);
      assertThat(x + Double.parseDouble(rect.getAttribute("width"))).isLessThanOrEqualTo(wide + 3);
      assertThat(y + Double.parseDouble(rect.getAttribute("height"))).isLessThanOrEqualTo(high + 3);
    }
    for (Element circle : picture.elements("circle")) {
      double x = Double.parseDouble(circle.getAttribute("cx"));
      double r = Double.parseDouble(circle.getAttribute("r"));
      assertThat(x - r).as(circle.getAttribute("data-part")).isGreaterThanOrEqualTo(0);
      assertThat(x + r).as(circle.getAttribute("data-part")).isLessThanOrEqualTo(wide);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void planAndEndViewAreToScale(String name) {
    Setup setup = SeedSetups.setup(name);
    Picture plan = new Picture(PlanView.of(setup, "plan"));
    double perM = plan.number("stock", "width") / setup.stock().lengthM();
    assertThat(plan.number("stock", "height"))
        .isCloseTo(setup.stock().thicknessM() * perM, within(ROUNDING));
    assertThat(plan.number("cutter", "r"))
        .isCloseTo(setup.cutter().diameterM() / 2 * perM, within(ROUNDING));
    double middle = plan.number("stock", "y") + plan.number("stock", "height") / 2;
    assertThat(middle - plan.number("cutter", "cy"))
        .as("the cutter axis stands off toward the fixed jaw, which is up")
        .isCloseTo(setup.cut().offsetM() * perM, within(2 * ROUNDING));

    Picture end = new Picture(EndView.of(setup, loads(setup), "end"));
    double scale = end.number("stock", "height") / setup.stock().heightM();
    assertThat(end.number("stock", "width"))
        .isCloseTo(setup.stock().thicknessM() * scale, within(ROUNDING));
    double[] cutter = end.points("cutter");
    assertThat(cutter[4] - cutter[2])
        .isCloseTo(setup.cutter().diameterM() * scale, within(2 * ROUNDING));
    double jawTop = end.number("fixed-jaw", "y");
    assertThat(jawTop - end.number("stock", "y"))
        .isCloseTo(setup.stickOutM() * scale, within(2 * ROUNDING));
  }

  @Test
  void theFixedJawIsAtTheTopOfThePlanAndOnTheRightOfTheEndView() {
    Setup setup = SeedSetups.setup("01-top-edge-wire-and-stop");
    Picture plan = new Picture(PlanView.of(setup, "plan"));
    assertThat(plan.number("fixed-jaw", "y")).isLessThan(plan.number("movable-jaw", "y"));
    Picture end = new Picture(EndView.of(setup, loads(setup), "end"));
    assertThat(end.number("fixed-jaw", "x")).isGreaterThan(end.number("movable-jaw", "x"));
    assertThat(end.number("packing", "cx"))
        .as("the wire lies against the movable jaw")
        .isLessThan(end.number("stock", "x"));
  }

  @Test
  void arrowsAreAsLongAsTheForcesAndPointTheWayOfTheirSigns() {
    Loads loads =
        new Loads(
            new Band(100, 200, 400),
            new Band(0, 50, 100),
            new Band(300, 600, 800),
            new Band(0, 0, 0),
            null,
            null,
            null);
    Picture push = new Picture(PushView.of(loads, UnitSystem.METRIC, "push"));
    double[] fixed = push.points("push-fixed-likely");
    double[] plus = push.points("push-plus-x-worst");
    double[] minus = push.points("push-minus-x-worst");
    assertThat(fixed[7]).as("up the sheet").isLessThan(fixed[1]);
    assertThat(plus[6]).as("to the right").isGreaterThan(plus[0]);
    assertThat(minus[6]).as("to the left").isLessThan(minus[0]);
    double perN = (fixed[1] - fixed[7]) / 600;
    assertThat((plus[6] - plus[0]) / 400).isCloseTo(perN, within(1e-3));
    assertThat((minus[0] - minus[6]) / 100).isCloseTo(perN, within(1e-3));
    assertThat(push.part("push-movable-worst")).as("no push, no arrow").isEmpty();
    assertThat(push.words()).contains("not known");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void alongTheJawsThePushesPointToTheirJawsAndAreInProportion(String name) {
    Setup setup = SeedSetups.setup(name);
    Loads loads = loads(setup);
    Picture end = new Picture(EndView.of(setup, loads, "end"));
    double most =
        Stream.of(loads.fixedN(), loads.movableN(), loads.liftN())
            .mapToDouble(b -> b == null ? 0 : b.high())
            .max()
            .orElse(0);
    end.part("push-fixed-worst")
        .ifPresent(
            arrow -> {
              double[] points = end.points("push-fixed-worst");
              assertThat(points[6] - points[0]).as("to the right").isPositive();
              assertThat((points[6] - points[0]) / 52)
                  .isCloseTo(loads.fixedN().high() / most, within(1e-3));
            });
    end.part("push-movable-worst")
        .ifPresent(
            arrow -> {
              double[] points = end.points("push-movable-worst");
              assertThat(points[0] - points[6]).as("to the left").isPositive();
              assertThat((points[0] - points[6]) / 52)
                  .isCloseTo(loads.movableN().high() / most, within(1e-3));
            });
    end.part("push-up-worst")
        .ifPresent(
            arrow -> {
              double[] points = end.points("push-up-worst");
              assertThat(points[7]).as("up the sheet").isLessThan(points[1]);
            });
  }

  @Test
  void turningTheFeedRoundTurnsTheFirstTouchTheFeedArrowAndTheLoadedJaw() {
    String narrow = "04-narrow-end-mill-along-thick-edge";
    Setup plus = fed(narrow, FeedDirection.PLUS_X);
    Setup minus = fed(narrow, FeedDirection.MINUS_X);
    assertThat(plus.cut().feed()).isNotEqualTo(minus.cut().feed());
    Picture planPlus = new Picture(PlanView.of(plus, "plan"));
    Picture planMinus = new Picture(PlanView.of(minus, "plan"));
    double middle = planPlus.number("cutter", "cx");
    assertThat(planPlus.number("first-touch", "cx"))
        .as("fed toward +x the cutter comes from the left")
        .isLessThan(middle);
    assertThat(planMinus.number("first-touch", "cx")).isGreaterThan(middle);

    Loads one = loads(plus);
    Loads other = loads(minus);
    assertThat(one.fixedN().likely()).isCloseTo(other.movableN().likely(), within(1e-6));
    assertThat(one.movableN().likely()).isCloseTo(other.fixedN().likely(), within(1e-6));
    assertThat(one.plusXN().high()).isCloseTo(other.minusXN().high(), within(1e-6));
    assertThat(one.loadJaw()).isNotEqualTo(other.loadJaw());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theStockLeansTheWayTheEvidenceSays(String name) {
    Setup setup = SeedSetups.setup(name);
    Loads loads = loads(setup);
    Picture end = new Picture(EndView.of(setup, loads, "end"));
    if (loads.loadJaw() == null || loads.edgeDeflectionM() == null) {
      assertThat(end.part("bent")).isEmpty();
      return;
    }
    double[] bent = end.points("bent");
    int top = bent.length / 2 - 2;
    double lean = bent[top] - bent[0];
    double side = loads.loadJaw() == JawSide.FIXED ? 1 : -1;
    assertThat(lean * side).isPositive();
    double perM = end.number("stock", "height") / setup.stock().heightM();
    double factor = EndView.factor(loads.edgeDeflectionM().high() * perM);
    assertThat(Math.abs(lean))
        .as("exaggerated by the factor that is written beside it")
        .isCloseTo(loads.edgeDeflectionM().high() * perM * factor, within(2 * ROUNDING));
    assertThat(end.words()).contains("leans toward the " + loads.loadJaw().words());
  }

  @Test
  void dimensionsAreInTheUnitsOfTheCaller() {
    Setup metric = SeedSetups.setup("01-top-edge-wire-and-stop");
    Setup inch = SeedSetups.setup("09-saw-cut-faces-without-packing");
    assertThat(new Picture(EndView.of(metric, loads(metric), "end")).words())
        .contains("40 mm grip")
        .contains("30 mm out")
        .contains("0.5 mm deep")
        .contains("wire 14 mm");
    assertThat(new Picture(EndView.of(inch, loads(inch), "end")).words())
        .contains("0.05 in deep")
        .doesNotContain(" mm");
    assertThat(new Picture(PushView.of(loads(inch), inch.units(), "push")).words())
        .contains(" lbf")
        .doesNotContain(" N");
  }

  @Test
  void hostileWordsStayWords() {
    Svg svg = new Svg("x", 10, 10, "<script>alert(1)</script>", "\"'&\u0001\uFFFE");
    svg.text(1, 1, Svg.Anchor.START, "</text><image href='//evil'/>");
    String text = svg.render();
    assertThat(text).doesNotContain("<script").doesNotContain("<image");
    Picture picture = new Picture(text);
    assertThat(picture.elements("title").get(0).getTextContent())
        .isEqualTo("<script>alert(1)</script>");
    assertThat(picture.elements("desc").get(0).getTextContent()).isEqualTo("\"'&\uFFFD\uFFFD");
  }

  @Test
  void aCoordinateThatIsNotFiniteIsRefused() {
    Svg svg = new Svg("x", 10, 10, "t", "d");
    assertThatThrownBy(() -> svg.circle(Ink.CUTTER, "cutter", 1, Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("NaN");
  }

  private static Setup clamped(String name) {
    Setup setup = SeedSetups.setup(name);
    Hold hold =
        setup
            .hold()
            .but()
            .stop(Stop.BOTH)
            .stopHeight(setup.stickOutM() / 2)
            .clamps(
                List.of(
                    new Clamp(JawSide.FIXED, 0.15, 0.03, 0.02, setup.stickOutM() + 0.05),
                    new Clamp(JawSide.MOVABLE, -0.02, 0.03, null, 0.01)))
            .held();
    return SetupEditor.of(setup).hold(hold).done();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void clampsAndAStopOfKnownHeightAreDrawnInsideTheSheetToScale(String name) {
    Setup setup = clamped(name);
    Picture end = new Picture(EndView.of(setup, loads(setup), "end"));
    Picture plan = new Picture(PlanView.of(setup, "plan"));
    assertInside(end);
    assertInside(plan);
    assertThat(plan.elements("rect")).filteredOn(DrawingTest::isClamp).hasSize(2);
    assertThat(end.elements("rect")).filteredOn(DrawingTest::isClamp).hasSize(2);
    double perM = Double.parseDouble(end.root().getAttribute("data-per-m"));
    assertThat(tall(end, "clamp")).isCloseTo((setup.stickOutM() + 0.05) * perM, within(0.1));
    assertThat(tall(end, "stop")).isCloseTo(setup.stickOutM() / 2 * perM, within(0.1));
  }

  private static boolean isClamp(Element drawn) {
    return drawn.getAttribute("data-part").equals("clamp");
  }

  private static double tall(Picture picture, String part) {
    return Double.parseDouble(picture.part(part).orElseThrow().getAttribute("height"));
  }

  @Test
  void aStopWithoutAHeightHasNoTopToDrawSeenAlongTheJaws() {
    Setup setup = SeedSetups.setup("01-top-edge-wire-and-stop");
    assertThat(EndView.of(setup, loads(setup), "end")).doesNotContain("data-part=\"stop\"");
  }
}
