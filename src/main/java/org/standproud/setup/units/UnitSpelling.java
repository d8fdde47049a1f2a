package org.standproud.setup.units;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The ways in which people write a unit besides its code: {@code N·m} and {@code Nm} for {@code
 * N.m}, {@code rev/min} for {@code rpm}, {@code ipm} for {@code in/min}. A spelling may stand for
 * two units, as {@code lb} does for a mass and for a force; what is measured decides.
 */
public final class UnitSpelling {

  private static final Map<UnitCode, List<String>> ALSO =
      Map.ofEntries(
          Map.entry(UnitCode.PERCENT_OF_ONE, List.of("percent", "pct")),
          Map.entry(UnitCode.M, List.of("metre", "metres", "meter", "meters")),
          Map.entry(UnitCode.MM, List.of("mm/tooth", "mm/t", "millimetre", "millimetres")),
          Map.entry(UnitCode.UM, List.of("micron", "microns", "micrometre")),
          Map.entry(
              UnitCode.IN, List.of("\"", "''", "inch", "inches", "in/tooth", "ipt", "inch/tooth")),
          Map.entry(UnitCode.FT, List.of("foot", "feet")),
          Map.entry(UnitCode.THOU, List.of("thous", "mil", "mils")),
          Map.entry(UnitCode.N, List.of("newton", "newtons")),
          Map.entry(UnitCode.LBF, List.of("lb", "lbs", "pound", "pounds", "lbsf")),
          Map.entry(UnitCode.KGF, List.of("kp")),
          Map.entry(UnitCode.N_M, List.of("newton.metre", "newton.metres")),
          Map.entry(
              UnitCode.LBF_FT,
              List.of(
                  "ft.lb",
                  "ft.lbs",
                  "ft.lbf",
                  "lb.ft",
                  "lbs.ft",
                  "ftlb",
                  "ftlbs",
                  "lbft",
                  "ftlbf",
                  "foot.pound",
                  "foot.pounds",
                  "pound.feet")),
          Map.entry(
              UnitCode.LBF_IN,
              List.of(
                  "in.lb", "in.lbs", "in.lbf", "lb.in", "inlb", "inlbs", "lbin", "inch.pounds")),
          Map.entry(UnitCode.HP, List.of("horsepower")),
          Map.entry(UnitCode.IN_PER_MIN, List.of("ipm", "inch/min", "inches/min")),
          Map.entry(UnitCode.FT_PER_MIN, List.of("sfm", "sfpm", "fpm", "feet/min")),
          Map.entry(
              UnitCode.RPM,
              List.of("rev/min", "revs/min", "r/min", "u/min", "min-1", "/min", "revolutions/min")),
          Map.entry(UnitCode.HZ, List.of("hertz")),
          Map.entry(UnitCode.DEG, List.of("°", "degree", "degrees")),
          Map.entry(UnitCode.KG, List.of("kilogram", "kilograms")),
          Map.entry(UnitCode.LB, List.of("lbs", "pound", "pounds", "lbm")),
          Map.entry(UnitCode.S, List.of("sec", "secs", "second", "seconds")),
          Map.entry(UnitCode.MIN, List.of("mins", "minute", "minutes")));

  /**
   * Codes whose letters mean the same in any case. Left out is what a shift key turns into
   * something else: {@code nm} is no {@code Nm}, {@code mpa} no {@code MPa}, {@code M} no {@code
   * m}.
   */
  private static final List<UnitCode> ANY_CASE =
      List.of(
          UnitCode.CM,
          UnitCode.MM,
          UnitCode.IN,
          UnitCode.FT,
          UnitCode.THOU,
          UnitCode.KN,
          UnitCode.LBF,
          UnitCode.LBF_FT,
          UnitCode.LBF_IN,
          UnitCode.PSI,
          UnitCode.KSI,
          UnitCode.KW,
          UnitCode.HP,
          UnitCode.MM_PER_MIN,
          UnitCode.M_PER_MIN,
          UnitCode.IN_PER_MIN,
          UnitCode.FT_PER_MIN,
          UnitCode.RPM,
          UnitCode.HZ,
          UnitCode.DEG,
          UnitCode.KG,
          UnitCode.LB);

  private static final Map<Dimension, Map<String, UnitCode>> BY_SPELLING = spellings();

  private UnitSpelling() {}

  /**
   * The unit that a text means where a dimension is measured.
   *
   * @param written a code or another spelling, blanks in it allowed
   * @param dimension what is measured
   * @return the unit; one of another dimension if the text means only that; empty if it means none
   */
  public static Optional<UnitCode> of(String written, Dimension dimension) {
    Optional<UnitCode> code = UnitCode.of(written);
    if (code.isPresent() && code.get().dimension() == dimension) {
      return code;
    }
    Optional<UnitCode> here = lookUp(written, dimension);
    return here.isPresent() ? here : code.isPresent() ? code : elsewhere(written);
  }

  private static Optional<UnitCode> elsewhere(String written) {
    return BY_SPELLING.keySet().stream()
        .sorted()
        .flatMap(dimension -> lookUp(written, dimension).stream())
        .findFirst();
  }

  private static Optional<UnitCode> lookUp(String written, Dimension dimension) {
    Map<String, UnitCode> spellings = BY_SPELLING.getOrDefault(dimension, Map.of());
    String plain = plain(written);
    UnitCode exact = spellings.get(plain);
    UnitCode any = spellings.get("any " + plain.toLowerCase(Locale.ROOT));
    return Optional.ofNullable(exact == null ? any : exact);
  }

  private static Map<Dimension, Map<String, UnitCode>> spellings() {
    Map<Dimension, Map<String, UnitCode>> all = new HashMap<>();
    for (UnitCode unit : UnitCode.values()) {
      Map<String, UnitCode> spellings =
          all.computeIfAbsent(unit.dimension(), dimension -> new HashMap<>());
      spellings.put(plain(unit.code()), unit);
      // N.m is also written without its point.
      spellings.putIfAbsent(plain(unit.code()).replace(".", ""), unit);
      if (ANY_CASE.contains(unit)) {
        spellings.put("any " + plain(unit.code()).toLowerCase(Locale.ROOT), unit);
      }
      ALSO.getOrDefault(unit, List.of()).forEach(also -> spellings.put("any " + also, unit));
    }
    return all;
  }

  /** One point for every sign of a product, plain letters for raised ones. */
  private static String plain(String written) {
    String signs = written.replaceAll("[″”“]|''", "\"").replace('μ', 'µ');
    return Normalizer.normalize(signs, Normalizer.Form.NFKC)
        .replace("μ", "u")
        .strip()
        .replaceAll("\\s*/\\s*", "/")
        .replaceAll("\\s*[·⋅∙•*.]\\s*|(?<=\\p{L})[\\s‐‑-]+(?=\\p{L})", ".");
  }
}
