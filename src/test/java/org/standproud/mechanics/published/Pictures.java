package org.standproud.mechanics.published;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.standproud.mechanics.cutter.SteppedCantilever;
import org.standproud.mechanics.drive.ClimbPull;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.finish.CornerMark;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.ForceSample;
import org.standproud.mechanics.force.KienzleLaw;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.ThinChip;
import org.standproud.mechanics.holding.contact.LineContact;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.reach.Body;
import org.standproud.mechanics.reach.Reach;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.mechanics.sampling.SamplingPlan;
import org.standproud.mechanics.time.PassPath;
import org.standproud.mechanics.time.PassTime;
import org.standproud.mechanics.vibration.DampedMode;
import org.standproud.mechanics.vibration.DirectionalFactors;
import org.standproud.mechanics.vibration.StabilityLobes;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Operation;
import org.standproud.setup.ToolMaterial;

/** One picture a subject, drawn with figures of the package itself. */
final class Pictures {

  private Pictures() {}

  static String of(Subject subject) {
    return switch (subject) {
      case ENGAGEMENT -> plan();
      case FORCE -> turn();
      case MATERIAL -> twoTables();
      case POWER -> specificForce();
      case HOLDING -> tipLimits();
      case CONTACT -> compression();
      case PLATE -> flexibility();
      case VIBRATION -> lobes();
      case CUTTER -> bending();
      case DRIVE -> pull();
      case FINISH -> marks();
      case TIME -> time();
      case REACH -> rooms();
      case SAMPLING -> chances();
    };
  }

  /** What the picture shows. */
  static String caption(Subject subject) {
    return switch (subject) {
      case ENGAGEMENT ->
          "Plan of a face mill D 80 on stock 60 wide, centre of the stock at y +5: the arc in cut"
              + " from phi_st to phi_ex.";
      case FORCE ->
          "Force on a plate 10 thick over one turn of a centred face mill D 63, z 5, kappa 45, one"
              + " tooth missing: the tooth behind the gap takes a double bite.";
      case MATERIAL ->
          "Specific cutting force of C45 by two published tables: why a stock carries a band.";
      case POWER -> "Specific cutting force over the chip, constants of VDI 3323.";
      case HOLDING ->
          "Force across the jaws that tips a stock, over the depth of a wire at the movable jaw:"
              + " N 20 kN, g 15 mm, H 60 mm.";
      case CONTACT -> "Compression of a rod between stock and jaw over the line load.";
      case PLATE ->
          "Deflection under a load on the free edge over the length of the plate, nu 0.3.";
      case VIBRATION -> "Limit of the depth over the speed, one mode across the feed, half climb.";
      case CUTTER ->
          "Deflection of a fluted cutter D 10 (0.8 D counted) at 100 N over its overhang.";
      case DRIVE -> "Mean pull of a climb cut on the table: N 4, a_p 3, f_z .08, K_t 1700 MPa.";
      case FINISH -> "Height of the feed marks over the feed, by corner radius.";
      case TIME -> "Time of a pass of 500 mm over the table feed.";
      case REACH ->
          "Room of an end mill D 16 with flutes of 32 and a stick-out of 50 beside a broad side, over"
              + " the depth: below the dark line one stands in the other.";
      case SAMPLING ->
          "How likely a plate 10 thick is to hold over the clamping force, and two standard errors"
              + " each way, 400 draws a point.";
    };
  }

  private static String plan() {
    Arc arc = PassFixture.pass(80, 6, 60, -5, 0.15).cutting().arc();
    StringBuilder svg = new StringBuilder(Chart.header(640, 330));
    double x = 200;
    double y = 160;
    double radius = 120;
    // 1.5 px a millimetre: the stock is 60 wide, its middle 5 mm toward y'
    svg.append("<rect x=\"200\" y=\"62.5\" width=\"330\" height=\"180\" fill=\"#e8e8e8\"/>\n");
    svg.append(Chart.text(522, 234, "end", "#333", "stock, 60 mm wide"));
    svg.append(Chart.text(82, 290, "end", "#333", "cutter D 80"));
    svg.append(
        String.format(
            Locale.ROOT,
            "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"none\" stroke=\"#666\"/>%n",
            Chart.px(x),
            Chart.px(y),
            Chart.px(radius)));
    StringBuilder points = new StringBuilder();
    for (int k = 0; k <= 60; k++) {
      double angle = arc.entryRad() + k * arc.spanRad() / 60;
      points.append(k == 0 ? "" : " ");
      points.append(Chart.px(x + radius * Math.sin(angle))).append(',');
      points.append(Chart.px(y - radius * Math.cos(angle)));
    }
    svg.append("<polyline fill=\"none\" stroke=\"#b3261e\" stroke-width=\"4\" points=\"");
    svg.append(points).append("\"/>\n");
    svg.append(Chart.line(x, y, x + 170, y, "#1b5e9b", 2));
    svg.append(Chart.text(x + 175, y + 4, "start", "#1b5e9b", "feed x'"));
    svg.append(Chart.line(x, y, x, y - 135, "#1b5e9b", 1));
    svg.append(Chart.text(x, 16, "middle", "#1b5e9b", "y', phi = 0, clockwise"));
    svg.append(angle(x, y, radius, arc.entryRad(), "phi_st"));
    svg.append(angle(x, y, radius, arc.exitRad(), "phi_ex"));
    return svg.append("</svg>\n").toString();
  }

  private static String angle(double x, double y, double radius, double rad, String name) {
    double endX = x + radius * Math.sin(rad);
    double endY = y - radius * Math.cos(rad);
    String words = String.format(Locale.ROOT, "%s %.1f deg", name, Math.toDegrees(rad));
    return Chart.line(x, y, endX, endY, "#b3261e", 1)
        + Chart.text(endX + 12, endY + 4, "start", "#b3261e", words);
  }

  private static String turn() {
    PassFixture pass =
        PassFixture.pass(63, 5, 10, 0, 0.12)
            .shaped(45, 1, 0, 0)
            .edges(null, List.of(), List.of(2), 0.0);
    List<ForceSample> turn =
        PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut()))
            .orElseThrow()
            .likelyRevolution(720);
    double[] degrees = turn.stream().mapToDouble(s -> Math.toDegrees(s.turnRad())).toArray();
    return new Chart("turn of tooth 0, deg", "force on the work, N")
        .curve("x, along", degrees, turn.stream().mapToDouble(s -> s.force().xN()).toArray())
        .curve("y, across", degrees, turn.stream().mapToDouble(s -> s.force().yN()).toArray())
        .curve("z, up", degrees, turn.stream().mapToDouble(s -> s.force().zN()).toArray())
        .svg();
  }

  private static String twoTables() {
    KienzleLaw classes = new KienzleLaw(1500e6, 0.22, ThinChip.AS_WRITTEN);
    KienzleLaw grades = new KienzleLaw(2220e6, 0.14, ThinChip.AS_WRITTEN);
    return new Chart("chip h, mm", "k_c, MPa")
        .curve("grade table, C45", 0.02, 0.4, 60, h -> grades.specificForcePaAt(h / 1e3) / 1e6)
        .curve("VDI 3323 class 2", 0.02, 0.4, 60, h -> classes.specificForcePaAt(h / 1e3) / 1e6)
        .svg();
  }

  private static String specificForce() {
    KienzleLaw carbon = new KienzleLaw(1500e6, 0.22, ThinChip.AS_WRITTEN);
    KienzleLaw stainless = new KienzleLaw(2150e6, 0.20, ThinChip.AS_WRITTEN);
    KienzleLaw aluminium = new KienzleLaw(800e6, 0.25, ThinChip.AS_WRITTEN);
    return new Chart("chip h, mm", "k_c, MPa")
        .curve("class 14 stainless", 0.02, 0.4, 60, h -> stainless.specificForcePaAt(h / 1e3) / 1e6)
        .curve("class 2 steel", 0.02, 0.4, 60, h -> carbon.specificForcePaAt(h / 1e3) / 1e6)
        .curve("class 22 aluminium", 0.02, 0.4, 60, h -> aluminium.specificForcePaAt(h / 1e3) / 1e6)
        .svg();
  }

  private static RigidLimits wireAt(double depthMm) {
    return new RigidLimits(Bearing.lineAt(depthMm / 1e3), Bearing.wholeFace(0.015), 0.060, 0);
  }

  private static String tipLimits() {
    return new Chart("depth w of the wire, mm", "tip limit, N")
        .curve("toward fixed jaw", 0, 15, 30, w -> wireAt(w).towardFixedN(20e3))
        .curve("away from it", 0, 15, 30, w -> wireAt(w).awayN(20e3))
        .svg();
  }

  private static String compression() {
    double steel = LineContact.contactModulusPa(205e9, 0.3, 205e9, 0.3);
    double copper = LineContact.contactModulusPa(117e9, 0.34, 205e9, 0.3);
    return new Chart("line load, N/mm", "compression, um")
        .curve(
            "copper rod 3 mm",
            10,
            200,
            38,
            p -> new LineContact(p * 1e3, 1.5e-3, copper).diametralCompressionM(117e9, 0.34) * 1e6)
        .curve(
            "steel rod 3 mm",
            10,
            200,
            38,
            p -> new LineContact(p * 1e3, 1.5e-3, steel).diametralCompressionM(205e9, 0.3) * 1e6)
        .svg();
  }

  private static PlateResponse plate(double bOverA) {
    return PlateResponse.of(
        new PlateInput(
            0.1,
            0.1 * bOverA,
            0.002,
            Band.exactly(200e9),
            0.3,
            7800,
            Band.exactly(1e17),
            Band.exactly(1e14),
            0.1 * bOverA,
            new PlatePoint(0, 0.1)));
  }

  private static String flexibility() {
    double unit = 200e9 * Math.pow(0.002, 3) / 12 / 0.91 / 0.01;
    return new Chart("length over height b/a", "w D/(P a^2)")
        .curve("at a corner", 0.5, 6, 22, r -> plate(r).flexibilityAtCornerMPerN().likely() * unit)
        .curve("at mid edge", 0.5, 6, 22, r -> plate(r).flexibilityAtMidEdgeMPerN().likely() * unit)
        .curve("beam of full width", 0.5, 6, 44, r -> 0.91 / (3 * r))
        .svg();
  }

  private static String lobes() {
    StabilityLobes lobes =
        StabilityLobes.milling(
            List.of(),
            List.of(new DampedMode(400, 0.02, 5e6)),
            DirectionalFactors.of(Math.PI / 2, Math.PI, 0.3),
            1.5e9,
            4);
    return new Chart("spindle speed, 1/min", "limit of a_p, mm")
        .curve("limit", 1000, 8000, 700, n -> Math.min(2, lobes.depthAtM(n / 60) * 1e3))
        .curve("at every speed", 1000, 8000, 1, n -> lobes.leastDepthM() * 1e3)
        .svg();
  }

  private static double bentMm(double lengthMm, double modulusPa) {
    return new SteppedCantilever(
                List.of(new SteppedCantilever.Section(lengthMm / 1e3, 0.008, modulusPa)))
            .deflectionM(100)
        * 1e3;
  }

  private static String bending() {
    return new Chart("overhang, mm", "deflection, mm")
        .curve("HSS", 10, 60, 50, l -> bentMm(l, 210e9))
        .curve("carbide", 10, 60, 50, l -> bentMm(l, 600e9))
        .svg();
  }

  private static double pullN(double share, double ratio) {
    return new ClimbPull(4, .003, .08e-3, share)
        .meanN(Band.exactly(1700e6), Band.exactly(ratio))
        .likely();
  }

  private static String pull() {
    return new Chart("radial depth a_e/D", "mean pull, N")
        .curve("F_r/F_t 0.2", 0.02, 1, 49, r -> pullN(r, 0.2))
        .curve("F_r/F_t 0.3", 0.02, 1, 49, r -> pullN(r, 0.3))
        .curve("F_r/F_t 0.5", 0.02, 1, 49, r -> pullN(r, 0.5))
        .svg();
  }

  private static String marks() {
    return new Chart("feed, mm", "R_t, um")
        .curve("r 0.4 mm", 0.02, 0.3, 28, f -> CornerMark.rtM(f / 1e3, 0.4e-3) * 1e6)
        .curve("r 0.8 mm", 0.02, 0.3, 28, f -> CornerMark.rtM(f / 1e3, 0.8e-3) * 1e6)
        .curve("r 1.6 mm", 0.02, 0.3, 28, f -> CornerMark.rtM(f / 1e3, 1.6e-3) * 1e6)
        .svg();
  }

  private static double timeS(double feedMmPerMin) {
    PassPath path = new PassPath(0.075, 0.5, 0.075);
    return PassTime.onePassS(path, Band.exactly(feedMmPerMin / 60e3)).likely();
  }

  private static String time() {
    return new Chart("table feed, mm/min", "time, s")
        .curve("D 150", 100, 800, 35, Pictures::timeS)
        .svg();
  }

  private static double roomMm(double depthMm, Body moving, Body standing) {
    Cutter cutter = SmallShop.endMill(ToolMaterial.CARBIDE, .016, .016, .032, .050);
    Cut cut = SmallShop.pass(Operation.BROAD_SIDE, depthMm / 1e3, -.012, FeedDirection.PLUS_X);
    return Reach.of(SmallShop.plate(cutter, cut)).clearances().stream()
            .filter(c -> c.moving() == moving && c.standing() == standing)
            .findFirst()
            .orElseThrow()
            .marginM()
        * 1e3;
  }

  private static String rooms() {
    return new Chart("axial depth, mm", "room, mm")
        .curve("edges to the jaw", 5, 65, 120, d -> roomMm(d, Body.CUTTING_PART, Body.MOVABLE_JAW))
        .curve("shank to the stock", 5, 65, 120, d -> roomMm(d, Body.SHANK, Body.STOCK))
        .curve("holder to the stock", 5, 65, 120, d -> roomMm(d, Body.HOLDER, Body.STOCK))
        .svg();
  }

  private static String chances() {
    double[] forcesN = IntStream.rangeClosed(1, 24).mapToDouble(k -> 500 * k).toArray();
    SamplingPlan plan = new SamplingPlan(400, SamplingPlan.USUAL.seed(), 1);
    List<HoldingChance> chances =
        Arrays.stream(forcesN)
            .mapToObj(n -> SmallShop.clamped(Band.exactly(n), null))
            .map(setup -> HoldingChance.of(setup, plan).orElseThrow())
            .toList();
    return new Chart("clamping force, N", "probability that it holds")
        .curve("two errors above", forcesN, apart(chances, 2))
        .curve("probability", forcesN, apart(chances, 0))
        .curve("two errors below", forcesN, apart(chances, -2))
        .svg();
  }

  private static double[] apart(List<HoldingChance> chances, double errors) {
    return chances.stream()
        .mapToDouble(c -> c.probability() + errors * c.standardError())
        .map(p -> Math.max(0, Math.min(1, p)))
        .toArray();
  }
}
