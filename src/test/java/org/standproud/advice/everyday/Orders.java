package org.standproud.advice.everyday;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.advice.DemoShop;
import org.standproud.advice.everyday.Order.Outcome;
import org.standproud.advice.everyday.Order.Pair;
import org.standproud.advice.everyday.Order.Relation;
import org.standproud.advice.workholding.OtherHold;
import org.standproud.advice.workholding.OtherHolds;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;

/** The orders that the trade knows, each over a grid of everyday set-ups: common practice. */
final class Orders {

  private static final List<String> MATERIALS =
      List.of("S235 / A36 hot rolled", "1045 cold drawn", "6061-T6");

  /** Length, thickness, height and grip in mm. */
  private static final List<List<String>> PLATES =
      List.of(
          List.of("140", "20", "70", "35"),
          List.of("120", "12", "55", "28"),
          List.of("150", "16", "80", "36"));

  private static final Map<String, String> ALL =
      Map.ofEntries(
          Map.entry("units", "metric"),
          Map.entry("surface", "machined"),
          Map.entry("highSpot", "0.02"),
          Map.entry("deburred", "yes"),
          Map.entry("vise", "ground vise 150"),
          Map.entry("clamping", "20..30 kN"),
          Map.entry("seat", "parallels"),
          Map.entry("stop", "both ends"),
          Map.entry("runOut", "0.01"),
          Map.entry("machine", "large knee mill"),
          Map.entry("cutter", "face mill 63, fresh"),
          Map.entry("face", "top"),
          Map.entry("stage", "rough"),
          Map.entry("axial", "1"),
          Map.entry("across", "0"),
          Map.entry("way", "-x"),
          Map.entry("speed", "500"),
          Map.entry("feedPerTooth", "0.1"),
          Map.entry("drive", "power"),
          Map.entry("others", "yes"));

  private static final Map<String, String> FINISH =
      Map.of("stage", "finish", "axial", "0.2", "feedPerTooth", "0.08");
  private static final Map<String, String> SIDE =
      Map.of(
          "cutter", "end mill 20 HSS, fresh",
          "face", "movable",
          "axial", "12",
          "across", "0.5",
          "speed", "310",
          "feedPerTooth", "0.03");

  private Orders() {}

  static List<Order> all() {
    return List.of(
        intoTheFixedJaw(),
        softPacking(),
        climbSlowlyByHand(),
        climbWithWornScrew(),
        deeperGrip(),
        finishIntoTheFixedJaw(),
        finishOnTheRim(),
        chippedRoughing(),
        wholeInserts(),
        flatOnTheTable());
  }

  private static Order intoTheFixedJaw() {
    List<Pair> pairs = new ArrayList<>();
    for (EverydaySetup base : grid(Map.of("packing", "movable wire copper 3@5"))) {
      for (String surface : List.of("machined", "rolled")) {
        for (Map<String, String> stage : List.of(Map.of("stage", "rough"), FINISH)) {
          Map<String, String> fields = new TreeMap<>(stage);
          fields.put("surface", surface);
          fields.put("highSpot", surface.equals("rolled") ? "0.08" : "0.02");
          pairs.add(
              pair(with(base, fields), surface + ", " + stage.get("stage"), way("-x"), way("+x")));
        }
      }
    }
    return Order.of(
        "load into the fixed jaw",
        "Packing near the jaw top on the movable side: load carried into the fixed jaw over load"
            + " into the movable jaw",
        Relation.BETTER,
        pairs);
  }

  private static Order softPacking() {
    List<Pair> pairs = new ArrayList<>();
    for (EverydaySetup base : grid(Map.of("surface", "sawn", "highSpot", "0.2"))) {
      pairs.add(
          pair(
              base,
              "sawn",
              Map.of("packing", "fixed sheet aluminium 1; movable sheet aluminium 1"),
              Map.of("packing", "")));
    }
    return Order.of(
        "soft packing on sawn faces",
        "Soft sheet on both sides of a sawn plate over bare jaws",
        Relation.BETTER,
        pairs);
  }

  /** Only where the pull on the table likely stays under its drag. */
  private static Order climbSlowlyByHand() {
    Map<String, String> slow =
        Map.of("drive", "hand", "drag", "yes", "feedPerTooth", "0.02", "across", "0.3");
    List<Pair> pairs = new ArrayList<>();
    for (EverydaySetup base : grid(SIDE)) {
      Pair pair = pair(with(base, slow), "side", way("climb"), way("conventional"));
      if (tableHolds(pair.better())) {
        pairs.add(pair);
      }
    }
    return Order.of(
        "climb slowly by hand",
        "On a broad side, climb fed slowly by hand with the slide part-locked over conventional,"
            + " where the pull on the table stays under its drag: the first touch pushes",
        Relation.BETTER,
        pairs);
  }

  private static boolean tableHolds(EverydaySetup climb) {
    Value margin = DemoShop.trials().of(climb.setup()).evidence().get(Vocabulary.TABLE_HOLD_MARGIN);
    return margin instanceof Value.Quantity quantity && quantity.band().likely() >= 1;
  }

  private static Order climbWithWornScrew() {
    Map<String, String> quick =
        Map.of("machine", "small knee mill", "drag", "no", "feedPerTooth", "0.1", "speed", "360");
    List<Pair> pairs = new ArrayList<>();
    for (EverydaySetup base : grid(SIDE)) {
      pairs.add(pair(with(base, quick), "side, worn screw", way("conventional"), way("climb")));
    }
    return Order.of(
        "no climb with a worn screw",
        "With a worn screw, a free slide and a quick feed, conventional over climb",
        Relation.BETTER,
        pairs);
  }

  private static Order deeperGrip() {
    List<String> steps = List.of("8", "12", "16", "20", "25", "30", "35");
    List<Pair> pairs = new ArrayList<>();
    for (EverydaySetup base : grid(Map.of("axial", "1.5", "stop", "both ends@10"))) {
      for (int i = 1; i < steps.size(); i++) {
        String deep = steps.get(i);
        String shallow = steps.get(i - 1);
        pairs.add(
            pair(
                base,
                deep + " over " + shallow + " mm",
                Map.of("grip", deep),
                Map.of("grip", shallow)));
      }
    }
    return Order.of(
        "deeper grip", "Deeper grip over shallower, at every step", Relation.BETTER, pairs);
  }

  private static Order finishIntoTheFixedJaw() {
    List<Pair> pairs = new ArrayList<>();
    for (EverydaySetup base : grid(FINISH)) {
      pairs.add(pair(base, "finish", way("-x"), way("+x")));
    }
    return Order.of(
        "finish into the fixed jaw",
        "A finishing pass pushed into the fixed jaw over one pushed off it",
        Relation.BETTER,
        pairs);
  }

  /** The axis stands toward the movable jaw so far that the rim just reaches the far face. */
  private static Order finishOnTheRim() {
    List<Pair> pairs = new ArrayList<>();
    Map<String, String> snugged = Map.of("drag", "yes", "feedPerTooth", "0.05");
    Map<String, String> preloaded = Map.of("machine", "machining center");
    for (EverydaySetup base : grid(FINISH)) {
      double offset = (Double.parseDouble(base.get("thickness")) - 63) / 2;
      Map<String, String> rim = Map.of("across", String.valueOf(offset));
      Map<String, String> centre = Map.of("across", "0");
      pairs.add(pair(with(base, snugged), "slide snugged and fed slowly", rim, centre));
      pairs.add(pair(with(base, preloaded), "preloaded screw", rim, centre));
    }
    return Order.of(
        "finish on the rim",
        "A finishing pass with the rim of the cutter tangent to the far face over one on the"
            + " centre line, where the table cannot be pulled: climbing out through a thin chip",
        Relation.BETTER,
        pairs);
  }

  private static Order chippedRoughing() {
    List<Pair> pairs = new ArrayList<>();
    Map<String, String> stout =
        Map.of("cutter", "shoulder mill 50, fresh", "axial", "0.8", "speed", "820");
    for (EverydaySetup base : grid(stout)) {
      pairs.add(pair(base, "rough", Map.of("edge", "chipped"), Map.of("edge", "")));
    }
    return Order.of(
        "roughing on chipped edges",
        "Roughing on chipped edges, where the hold bears it, keeps the verdict of sharp ones",
        Relation.NO_GRAVER,
        pairs);
  }

  private static Order wholeInserts() {
    List<Pair> pairs = new ArrayList<>();
    Map<String, String> light = Map.of("axial", "0.5", "feedPerTooth", "0.08", "speed", "820");
    for (EverydaySetup base : grid(light)) {
      pairs.add(
          pair(
              base,
              "rough",
              Map.of("cutter", "shoulder mill 50, fresh"),
              Map.of("cutter", "shoulder mill 50, one insert chipped")));
    }
    return Order.of(
        "whole inserts",
        "Roughing with every insert whole over roughing with one of them chipped",
        Relation.BETTER,
        pairs);
  }

  private static Order flatOnTheTable() {
    Map<String, String> poor = new TreeMap<>(SIDE);
    poor.put("way", "conventional");
    poor.put("grip", "12");
    poor.put("clamping", "6..10 kN");
    return new Order(
        "flat on the table",
        "A plate that can lie flat: flat under straps over an angle plate or the side of the vise",
        List.of(),
        trials -> grid(poor).stream().map(Orders::heldOtherwise).toList());
  }

  private static Outcome heldOtherwise(EverydaySetup row) {
    List<OtherHold> holds =
        OtherHolds.of(row.setup(), false, DemoShop.CARDS, DemoShop.CATALOGUE).holds();
    OtherHold flat =
        holds.stream().filter(hold -> hold.way().startsWith("flat")).findFirst().orElseThrow();
    OtherHold upright =
        holds.stream()
            .filter(hold -> !hold.way().startsWith("flat"))
            .max(Comparator.comparingInt(OtherHold::score))
            .orElseThrow();
    return new Outcome(
        row.id() + ", over " + upright.way(),
        flat.score(),
        upright.score(),
        String.valueOf(flat.verdict()),
        String.valueOf(upright.verdict()),
        flat.score() > upright.score());
  }

  private static Map<String, String> way(String way) {
    return Map.of("way", way);
  }

  private static Pair pair(
      EverydaySetup base, String label, Map<String, String> better, Map<String, String> worse) {
    Map<String, String> named = Map.of("id", base.get("id") + ", " + label);
    return Pair.of(with(base, named), better, worse);
  }

  private static EverydaySetup with(EverydaySetup base, Map<String, String> fields) {
    Map<String, String> all = new TreeMap<>(base.fields());
    all.putAll(fields);
    return new EverydaySetup(all);
  }

  private static List<EverydaySetup> grid(Map<String, String> fields) {
    List<EverydaySetup> grid = new ArrayList<>();
    for (String material : MATERIALS) {
      for (List<String> plate : PLATES) {
        Map<String, String> row = new TreeMap<>(ALL);
        row.put("id", material + " " + String.join(" x ", plate.subList(0, 3)));
        row.put("material", material);
        row.put("length", plate.get(0));
        row.put("thickness", plate.get(1));
        row.put("height", plate.get(2));
        row.put("grip", plate.get(3));
        row.putAll(fields);
        grid.add(new EverydaySetup(row));
      }
    }
    return grid;
  }
}
