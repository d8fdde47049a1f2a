package org.standproud.advice.everyday;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.standproud.advice.DemoShop;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
import org.standproud.setup.Vise;

/**
 * Set-ups drawn at random as they might come up in a shop any day: ordinary stock, the vise that is
 * there, speeds near those of the tables, and things left unsaid as people leave them. How often
 * each choice comes up is common practice, no source.
 */
final class EverydayShop {

  private static final List<String> MATERIALS =
      List.of(
          "S235 / A36 hot rolled",
          "1018 cold drawn",
          "1045 hot rolled",
          "1045 cold drawn",
          "4140 / 42CrMo4 annealed",
          "O1 tool steel annealed",
          "304 stainless annealed",
          "Grey iron EN-GJL-250",
          "6061-T6",
          "5083-H111",
          "6061-T6",
          "C360 free-cutting brass");
  private static final List<String> FACE_MILLS =
      List.of(
          "face mill 63, fresh",
          "face mill 63, fresh",
          "face mill 63, worn",
          "face mill 80, fresh",
          "face mill 80, used",
          "shoulder mill 50, fresh",
          "shell mill 50 HSS, fresh",
          "shell mill 63 HSS, used");
  private static final List<String> END_MILLS =
      List.of(
          "end mill 20 HSS, fresh",
          "end mill 16 HSS, used",
          "end mill 12 carbide, fresh",
          "end mill 16 carbide, fresh",
          "indexable end mill 25");

  private final RandomGenerator random;

  /**
   * A shop.
   *
   * @param seed the same seed gives the same set-ups
   */
  EverydayShop(long seed) {
    random = RandomGeneratorFactory.of("Xoroshiro128PlusPlus").create(seed);
  }

  /** The next set-up, in metric units. */
  EverydaySetup next() {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("id", "random");
    row.put("units", "metric");
    boolean top = chance(0.65);
    boolean finish = chance(0.3);
    Vise vise = vise();
    double grip = 1000 * vise.jawHeightM() * between(0.5, 1);
    double above = grip * between(0.2, 1.2);
    hold(row, vise, grip);
    stock(row, grip + above);
    Machine machine = machine(vise);
    row.put("machine", machine.name());
    Cutter cutter =
        DemoShop.CATALOGUE.cutters().get(top && chance(0.85) ? one(FACE_MILLS) : one(END_MILLS));
    row.put("cutter", cutter.name());
    row.put("stage", finish ? "finish" : "rough");
    put(
        row,
        "feedPerTooth",
        cutter.kind() == CutterKind.END_MILL ? between(0.03, 0.06) : between(0.06, 0.12));
    if (top) {
      topEdge(row, cutter, finish);
    } else {
      broadSide(row, cutter, machine, finish, above);
    }
    row.put("drive", machine.kind() == MachineKind.MANUAL && chance(0.3) ? "hand" : "power");
    row.put("drag", maybe(0.4, one(List.of("yes", "no"))));
    row.put("others", maybe(0.7, chance(0.9) ? "yes" : "no"));
    speed(row, machine, cutter);
    return new EverydaySetup(row);
  }

  private Vise vise() {
    List<String> names =
        List.of(
            "ground vise 150",
            "ground vise 150",
            "down-thrust vise 160",
            "down-thrust vise 160",
            "soft-cap vise 125",
            "old shop vise 100");
    return DemoShop.CATALOGUE.vises().get(one(names));
  }

  private Machine machine(Vise vise) {
    String name =
        vise.jawHeightM() < 0.04
            ? one(List.of("small knee mill", "large knee mill"))
            : one(List.of("large knee mill", "large knee mill", "machining center"));
    return DemoShop.CATALOGUE.machines().get(name);
  }

  private void stock(Map<String, String> row, double height) {
    put(row, "length", between(70, 180));
    put(row, "thickness", between(10, 35));
    put(row, "height", height);
    row.put("material", one(MATERIALS));
    boolean skin = chance(0.3);
    row.put("surface", maybe(0.8, skin ? "rolled" : "machined"));
    row.put("highSpot", maybe(0.4, number(skin ? between(0.03, 0.12) : between(0, 0.03))));
    row.put("deburred", maybe(0.7, chance(0.9) ? "yes" : "no"));
  }

  private void hold(Map<String, String> row, Vise vise, double grip) {
    row.put("vise", vise.name());
    put(row, "grip", grip);
    double firm = vise.greatestClampingForceN() / 1000 * between(0.5, 0.85);
    row.put("clamping", maybe(0.45, number(0.8 * firm) + ".." + number(1.2 * firm) + " kN"));
    row.put(
        "packing",
        maybe(0.25, "movable wire copper 3@" + number(Math.max(2, between(0.15, 0.5) * grip))));
    row.put("seat", maybe(0.85, "parallels"));
    row.put("stop", maybe(0.8, one(List.of("none", "-x", "+x", "both ends", "both ends"))));
    row.put("runOut", maybe(0.3, number(between(0, 0.03))));
  }

  private void topEdge(Map<String, String> row, Cutter cutter, boolean finish) {
    double most = cutter.kind() == CutterKind.END_MILL ? 0.8 : 1.5;
    row.put("face", "top");
    put(row, "axial", finish ? between(0.1, 0.3) : between(0.3, most));
    row.put("across", "0");
    row.put("way", chance(0.7) ? "-x" : "+x");
  }

  /** Few climb with a hand-wheel machine, most do on one with ball screws. */
  private void broadSide(
      Map<String, String> row, Cutter cutter, Machine machine, boolean finish, double above) {
    double climbs = machine.kind() == MachineKind.MANUAL ? 0.25 : 0.8;
    row.put("face", chance(0.8) ? "movable" : "fixed");
    put(row, "axial", Math.min(900 * cutter.greatestDepthM(), above * between(0.3, 0.6)));
    put(row, "across", finish ? between(0.1, 0.2) : between(0.2, 0.6));
    row.put("way", chance(climbs) ? "climb" : "conventional");
  }

  /** The nearest speed below what the tables say for the middle of the range. */
  private static void speed(Map<String, String> row, Machine machine, Cutter cutter) {
    Material material = DemoShop.CATALOGUE.materials().get(row.get("material"));
    CuttingRange range = material.rangeFor(cutter.toolMaterial());
    double cutting = (range.leastSpeedMPerS() + range.greatestSpeedMPerS()) / 2;
    double wanted =
        Math.min(cutting / (Math.PI * cutter.diameterM()), machine.greatestSpeedRevPerS());
    double chosen =
        machine.speedsRevPerS().stream()
            .filter(speed -> speed <= wanted * 1.1)
            .reduce((slower, faster) -> faster)
            .orElse(machine.speedsRevPerS().isEmpty() ? wanted : machine.leastSpeedRevPerS());
    put(row, "speed", 60 * chosen);
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** The text in a share of all set-ups, else nothing: not said. */
  private String maybe(double share, String text) {
    return chance(share) ? text : "";
  }

  private static void put(Map<String, String> row, String column, double value) {
    row.put(column, number(value));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4g", value);
  }
}
