package org.standproud.setup.request;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.HandFeedPace;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.Vise;
import org.standproud.setup.Worded;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What the words of a shop stand for, read once from the files in {@code /spoken}. */
final class SpokenShop {

  private static final double MM = 1e-3;
  private static final double MM_PER_MIN = 1e-3 / 60;

  private static final Pattern TEETH =
      Pattern.compile("\\b(\\d{1,2})[ -]?(?:flutes?|tooth|teeth|inserts?|lips?)\\b");
  private static final Pattern LEFT_HAND = Pattern.compile("\\bleft[ -]hand(?:ed)?\\b");
  private static final Pattern HSS = Pattern.compile("\\b(?:hss|high[ -]speed[ -]steel|cobalt)\\b");
  private static final Pattern CARBIDE = Pattern.compile("\\b(?:solid |cemented )?carbide\\b");
  private static final Pattern FILLER = Pattern.compile("\\b(?:indexable|insert|a|an|the)\\b");

  static final SpokenItems<Material> MATERIALS = plain(CatalogueSection.MATERIALS, "materials");
  static final SpokenItems<Machine> MACHINES = plain(CatalogueSection.MACHINES, "machines");
  static final SpokenItems<Vise> VISES = vises();
  static final SpokenItems<Cutter> CUTTERS = cutters();

  private static final JsonNode HANDS = file("hands");
  private static final Map<HandleEffort, Band> PULL_N =
      bands(HandleEffort.class, HANDS.path("clamping"), 1);
  private static final Band HANDLE_M = band(HANDS.path("handleLength"), MM);
  private static final Map<HandFeedPace, Band> FEED_M_PER_S =
      bands(HandFeedPace.class, HANDS.path("handFeed"), MM_PER_MIN);

  private SpokenShop() {}

  /**
   * The torque that a pull leaves on the screw.
   *
   * @param effort how hard the handle was pulled
   * @param handleM length of the handle in m; null if not known
   * @return in N m
   */
  static Band torqueNm(HandleEffort effort, @Nullable Double handleM) {
    Band handle = handleM == null ? HANDLE_M : Band.exactly(handleM);
    return need(PULL_N, effort).times(handle);
  }

  /** The feed of the table for a way to turn the wheel, in m/s. */
  static Band feedMPerS(HandFeedPace feed) {
    return need(FEED_M_PER_S, feed);
  }

  private static <E extends Enum<E>> Band need(Map<E, Band> bands, E word) {
    Band band = bands.get(word);
    if (band == null) {
      throw new IllegalStateException("no band is stated for " + word);
    }
    return band;
  }

  private static <P> SpokenItems<P> plain(CatalogueSection<P> kind, String name) {
    Map<String, ObjectNode> byWord = new LinkedHashMap<>();
    for (JsonNode row : file(name).path(name)) {
      row.path("words")
          .forEach(word -> byWord.put(word.stringValue(), (ObjectNode) row.path("item")));
    }
    return new SpokenItems<>(kind, SpokenItems.among(byWord), List.copyOf(byWord.keySet()));
  }

  private static SpokenItems<Vise> vises() {
    JsonNode file = file("vises");
    SizedRows rows = new SizedRows(file.path("sizedBy").stringValue(), file.path("rows"));
    List<String> words = texts(file.path("words"));
    Function<String, @Nullable ObjectNode> lookup =
        text -> {
          SpokenText.Sized sized = SpokenText.sized(text);
          return sized != null && words.contains(sized.rest()) ? rows.at(sized.metres()) : null;
        };
    return new SpokenItems<>(
        CatalogueSection.VISES,
        lookup,
        List.of("4 inch vise", "5 inch vise", "6 inch vise", "150 mm vise"));
  }

  private static SpokenItems<Cutter> cutters() {
    Map<String, SpokenCutter> byWord = new LinkedHashMap<>();
    List<String> words = new ArrayList<>();
    for (JsonNode row : file("cutters").path("cutters")) {
      List<String> names = texts(row.path("words"));
      SpokenCutter cutter =
          new SpokenCutter(
              row.path("kind").stringValue(names.get(0)),
              row.path("toolMaterial").stringValue(),
              new SizedRows(CutterFields.DIAMETER.name(), row.path("rows")));
      names.forEach(name -> byWord.put(name, cutter));
      words.add("50 mm " + names.get(0) + ", " + cutter.toolMaterial());
      words.add("2 inch " + names.get(0) + ", " + cutter.toolMaterial());
    }
    return new SpokenItems<>(CatalogueSection.CUTTERS, text -> cutter(text, byWord), words);
  }

  /**
   * A kind of cutter.
   *
   * @param kind the family it belongs to
   * @param toolMaterial what its edges are of unless the request names it
   * @param rows its sizes
   */
  private record SpokenCutter(String kind, String toolMaterial, SizedRows rows) {}

  private static @Nullable ObjectNode cutter(String text, Map<String, SpokenCutter> byWord) {
    Matcher teeth = TEETH.matcher(text);
    SpokenText.Sized sized = SpokenText.sized(TEETH.matcher(text).replaceAll(" "));
    if (sized == null) {
      return null;
    }
    boolean hss = HSS.matcher(sized.rest()).find();
    boolean carbide = CARBIDE.matcher(sized.rest()).find();
    boolean left = LEFT_HAND.matcher(sized.rest()).find();
    String rest = sized.rest();
    for (Pattern read : List.of(HSS, CARBIDE, LEFT_HAND, FILLER)) {
      rest = read.matcher(rest).replaceAll(" ");
    }
    SpokenCutter kind = byWord.get(rest.replaceAll("[ ,]+", " ").strip());
    ObjectNode item = kind == null || (hss && carbide) ? null : kind.rows().at(sized.metres());
    if (kind == null || item == null) {
      return null;
    }
    item.put(CutterFields.KIND.name(), kind.kind());
    item.put(
        CutterFields.TOOL_MATERIAL.name(), hss ? "hss" : carbide ? "carbide" : kind.toolMaterial());
    item.put(CutterFields.SPIN.name(), left ? "counterclockwise" : "clockwise");
    if (teeth.find()) {
      item.put(CutterFields.TEETH.name(), Integer.parseInt(teeth.group(1)));
    }
    return item;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.stringValue()));
    return List.copyOf(texts);
  }

  private static <E extends Enum<E> & Worded> Map<E, Band> bands(
      Class<E> type, JsonNode byWord, double unit) {
    Map<E, Band> bands = new EnumMap<>(type);
    for (E word : type.getEnumConstants()) {
      bands.put(word, band(byWord.path(word.words()), unit));
    }
    return bands;
  }

  private static Band band(JsonNode node, double unit) {
    return new Band(
            node.path("low").doubleValue(),
            node.path("likely").doubleValue(),
            node.path("high").doubleValue())
        .times(unit);
  }

  private static JsonNode file(String name) {
    String path = "/spoken/" + name + ".yaml";
    try (InputStream in = SpokenShop.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException(path + " is not there");
      }
      return RequestText.yaml(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (RequestText.Malformed e) {
      throw new IllegalStateException(path + " is not YAML", e);
    }
  }
}
