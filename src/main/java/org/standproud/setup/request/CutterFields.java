package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.ANGLE;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.SPINDLE_SPEED;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.CutterKind;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.Spin;
import org.standproud.setup.ToolMaterial;

/** The fields of a cutter in its holder. */
public final class CutterFields {

  static final int MOST_TEETH = 60;

  public static final Text<Cutter> NAME =
      new Text<>("name", 80, true, Cutter::name, "name in the catalogue");
  public static final Choice<Cutter, CutterKind> KIND =
      Choice.of("kind", CutterKind.class, Cutter::kind, "family");
  public static final Choice<Cutter, ToolMaterial> TOOL_MATERIAL =
      Choice.of("toolMaterial", ToolMaterial.class, Cutter::toolMaterial, "edge material");
  public static final Choice<Cutter, Spin> SPIN =
      Choice.of("spin", Spin.class, Cutter::spin, "sense of rotation seen from above");
  public static final Quantity<Cutter> DIAMETER =
      Quantity.of("diameter", LENGTH, 0.5e-3, 0.5, Cutter::diameterM, "DC, cutting diameter");
  public static final Count<Cutter> TEETH =
      new Count<>("teeth", 1, MOST_TEETH, Cutter::teeth, "ZEFP, effective teeth", "teeth");
  public static final Quantity<Cutter> GREATEST_DEPTH =
      Quantity.of(
          "greatestDepth", LENGTH, 0.1e-3, 0.3, Cutter::greatestDepthM, "APMX, greatest depth");
  public static final Quantity<Cutter> OVERHANG =
      Quantity.of(
          "overhang",
          LENGTH,
          5e-3,
          0.8,
          Cutter::overhangM,
          "LPR, spindle nose to cutting end, holder included");
  public static final Quantity<Cutter> STICK_OUT =
      Quantity.of("stickOut", LENGTH, 2e-3, 0.5, Cutter::stickOutM, "holder face to cutting end");
  public static final Quantity<Cutter> FLUTE_LENGTH =
      Quantity.of(
          "fluteLength",
          LENGTH,
          0.5e-3,
          0.4,
          Cutter::fluteLengthM,
          "length of the fluted part, or of the cutter body");
  public static final Quantity<Cutter> SHANK =
      Quantity.of(
          "shankDiameter", LENGTH, 1e-3, 0.16, Cutter::shankDiameterM, "shank or arbor diameter");
  public static final Quantity<Cutter> HOLDER =
      Quantity.of(
          "holderDiameter",
          LENGTH,
          3e-3,
          0.3,
          Cutter::holderDiameterM,
          "greatest diameter of the holder");
  public static final Quantity<Cutter> ENTERING_ANGLE =
      Quantity.of(
          "enteringAngle",
          ANGLE,
          Math.toRadians(5),
          Math.toRadians(95),
          Cutter::enteringAngleRad,
          "KAPR, entering angle");
  public static final Quantity<Cutter> CORNER_RADIUS =
      Quantity.of("cornerRadius", LENGTH, 0, 0.05, Cutter::cornerRadiusM, "RE, corner radius");
  public static final Quantity<Cutter> HELIX =
      Quantity.of(
          "helix",
          ANGLE,
          Math.toRadians(-60),
          Math.toRadians(60),
          Cutter::helixRad,
          "FHA, helix angle, positive if it lifts the chips whichever the spin, zero if straight");
  public static final Quantity<Cutter> RAKE =
      Quantity.of(
          "rake", ANGLE, Math.toRadians(-30), Math.toRadians(40), Cutter::rakeRad, "radial rake");
  public static final Quantity<Cutter> WIPER =
      Quantity.of(
          "wiper", LENGTH, 0, 0.02, Cutter::wiperM, "BS, length of the wiper flat, zero if none");
  public static final Quantity<Cutter> EDGE_RADIUS =
      Quantity.of("edgeRadius", LENGTH, 0.1e-6, 1e-3, Cutter::edgeRadiusM, "rounding of the edge");
  public static final Choice<Cutter, EdgeCondition> EDGE =
      Choice.<Cutter, EdgeCondition>of(
              "edge", EdgeCondition.class, Cutter::edge, "state of the edges")
          .called("edges")
          .mayBeUnknown();
  public static final Counts<Cutter> CHIPPED =
      new Counts<>(
          "chippedTeeth",
          MOST_TEETH - 1,
          MOST_TEETH,
          Cutter::chippedTeeth,
          "numbers from 0 of teeth that are chipped");
  public static final Counts<Cutter> MISSING =
      new Counts<>(
          "missingTeeth",
          MOST_TEETH - 1,
          MOST_TEETH,
          Cutter::missingTeeth,
          "numbers from 0 of teeth that are missing");
  public static final Quantity<Cutter> RUN_OUT =
      Quantity.<Cutter>of(
              "runOut", LENGTH, 0, 2e-3, Cutter::runOutM, "radial run-out, total indicator reading")
          .called("cutter run-out")
          .mayBeUnknown();

  public static final Quantity<Cutter> GREATEST_SPEED =
      Quantity.<Cutter>of(
              "greatestSpeed",
              SPINDLE_SPEED,
              1,
              MachineFields.GREATEST_SPEED_REV_PER_S,
              Cutter::greatestSpeedRevPerS,
              "greatest spindle speed marked on cutter or holder, the lesser of both")
          .called("marked speed")
          .mayBeUnknown();

  static final ObjectSchema<Cutter> SHAPE =
      new ObjectSchema<>(
          "cutter",
          List.of(
              NAME,
              KIND,
              TOOL_MATERIAL,
              SPIN,
              DIAMETER,
              TEETH,
              GREATEST_DEPTH,
              OVERHANG,
              STICK_OUT,
              FLUTE_LENGTH,
              SHANK,
              HOLDER,
              ENTERING_ANGLE,
              CORNER_RADIUS,
              HELIX,
              RAKE,
              WIPER,
              EDGE_RADIUS,
              EDGE,
              CHIPPED,
              MISSING,
              RUN_OUT,
              GREATEST_SPEED),
          CutterFields::check);

  private CutterFields() {}

  private static void check(Values v, FieldLocation place) {
    OrderCheck.check(v, STICK_OUT, OVERHANG, place);
    OrderCheck.check(v, FLUTE_LENGTH, STICK_OUT, place);
    OrderCheck.check(v, GREATEST_DEPTH, FLUTE_LENGTH, place);
    Double diameter = v.get(DIAMETER);
    Double corner = v.get(CORNER_RADIUS);
    if (diameter != null && corner != null && corner > diameter / 2) {
      OrderCheck.exceeds(
          corner,
          CORNER_RADIUS,
          diameter / 2,
          "half the diameter",
          place.child(CORNER_RADIUS.name()));
    }
    checkTeeth(v, place);
  }

  private static void checkTeeth(Values v, FieldLocation place) {
    Integer teeth = v.get(TEETH);
    if (teeth == null) {
      return;
    }
    List<Integer> chipped = orNone(v.get(CHIPPED));
    List<Integer> missing = orNone(v.get(MISSING));
    checkNumbers(chipped, Set.of(), teeth, place.child(CHIPPED.name()));
    checkNumbers(missing, Set.copyOf(chipped), teeth, place.child(MISSING.name()));
    if (Set.copyOf(missing).size() >= teeth) {
      place.child(MISSING.name()).fault(null, "a cutter needs at least one tooth left");
    }
  }

  private static void checkNumbers(
      List<Integer> numbers, Set<Integer> taken, int teeth, FieldLocation place) {
    Set<Integer> seen = new HashSet<>(taken);
    for (int i = 0; i < numbers.size(); i++) {
      if (numbers.get(i) >= teeth) {
        place
            .item(i)
            .faults()
            .add(
                new Problem(
                    place.item(i).pointer(),
                    numbers.get(i).toString(),
                    "the cutter has no tooth of this number",
                    "from 0 to " + (teeth - 1),
                    null,
                    null));
      } else if (!seen.add(numbers.get(i))) {
        place.item(i).fault(null, "this tooth is listed twice");
      }
    }
  }

  private static List<Integer> orNone(@Nullable List<Integer> numbers) {
    return numbers == null ? List.of() : numbers;
  }

  static Cutter cutter(Values v) {
    return CutterBuilder.builder()
        .name(v.need(NAME))
        .kind(v.need(KIND))
        .toolMaterial(v.need(TOOL_MATERIAL))
        .spin(v.need(SPIN))
        .diameterM(v.need(DIAMETER))
        .teeth(v.need(TEETH))
        .greatestDepthM(v.need(GREATEST_DEPTH))
        .overhangM(v.need(OVERHANG))
        .stickOutM(v.need(STICK_OUT))
        .fluteLengthM(v.need(FLUTE_LENGTH))
        .shankDiameterM(v.need(SHANK))
        .holderDiameterM(v.need(HOLDER))
        .enteringAngleRad(v.need(ENTERING_ANGLE))
        .cornerRadiusM(v.need(CORNER_RADIUS))
        .helixRad(v.need(HELIX))
        .rakeRad(v.need(RAKE))
        .wiperM(v.need(WIPER))
        .edgeRadiusM(v.need(EDGE_RADIUS))
        .edge(v.get(EDGE))
        .chippedTeeth(orNone(v.get(CHIPPED)))
        .missingTeeth(orNone(v.get(MISSING)))
        .runOutM(v.get(RUN_OUT))
        .greatestSpeedRevPerS(v.get(GREATEST_SPEED))
        .build();
  }
}
