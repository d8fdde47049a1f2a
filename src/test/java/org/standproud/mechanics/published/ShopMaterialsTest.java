package org.standproud.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.force.KienzleLaw;
import org.standproud.mechanics.force.ThinChip;
import org.standproud.setup.Band;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Material;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;

/**
 * Constants of stock and cutting data: each published figure against the law that uses it and
 * against the band of the stock in the demonstration catalogue that is made from it. What is
 * computed is the value of the band nearest to the published one.
 */
@Tag(PublishedTable.TESTS)
class ShopMaterialsTest {

  private static final Catalogue SHOP = shop();

  private static Catalogue shop() {
    try {
      return ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final PublishedTable CLASSES =
      new PublishedTable(
          Subject.MATERIAL,
          "VDI 3323 class table, constants of Kienzle's law (three reprints agree but for 36 and"
              + " 37, of which both are here)",
          SourceTag.FOUND,
          ResultKind.STORED);
  private static final PublishedTable GRADES =
      new PublishedTable(
          Subject.MATERIAL,
          "German grade table (Tschaetsch, Praxis der Zerspantechnik; Koenig and Klocke)",
          SourceTag.MEMORY,
          ResultKind.STORED);
  private static final PublishedTable PROPERTIES =
      new PublishedTable(
          Subject.MATERIAL,
          "university table Appendix C and engineering course tables of properties",
          SourceTag.FOUND,
          ResultKind.STORED);
  private static final PublishedTable RECALLED =
      new PublishedTable(
          Subject.MATERIAL, "handbook values of properties", SourceTag.MEMORY, ResultKind.STORED);
  private static final PublishedTable SPEEDS =
      new PublishedTable(
          Subject.MATERIAL,
          "Carvill, Mechanical Engineer's Data Handbook p. 187; table of a scientific-apparatus"
              + " shop; manual of a small mill; course sheet",
          SourceTag.FOUND,
          ResultKind.STORED);

  /** The shop rounds speeds to whole m/min and feeds to 0.01 mm. */
  private static final double ROUNDED_SPEED = 0.5;

  private static final double ROUNDED_FEED = 0.005;

  private static Material stock(String name) {
    return Objects.requireNonNull(SHOP.materials().get(name), name);
  }

  private static void constants(
      PublishedTable table, String row, double kc, double mc, @Nullable String name) {
    PublishedTable.Row published = table.row(row);
    KienzleLaw law = new KienzleLaw(kc * 1e6, mc, ThinChip.AS_WRITTEN);
    published.figure("k_c at a chip of 1 mm", "MPa", kc, law.specificForcePaAt(1e-3) / 1e6, 1e-6);
    if (name != null) {
      Material stock = stock(name);
      Band inMpa = stock.specificCuttingForcePa().times(1e-6);
      published.held("kc1.1, band of " + name, "MPa", kc, inMpa, 1e-6);
      published.held("m_c, band of " + name, "", mc, stock.chipExponent(), 1e-9);
    }
  }

  @ParameterizedTest(name = "class {0}: kc1.1 {1}, mc {2}")
  @CsvSource({
    "1, 1350, .21, 1018 cold drawn",
    "2, 1500, .22, 1045 hot rolled",
    "3, 1675, .24,",
    "4, 1700, .24, C60 annealed",
    "5, 1900, .24,",
    "6, 1775, .24, 4140 / 42CrMo4 annealed",
    "7, 1675, .24, 4140 / 42CrMo4 normalised",
    "8, 1725, .24, 4340 normalised",
    "9, 1800, .24, 4340 normalised",
    "10, 2450, .23, O1 tool steel annealed",
    "11, 2500, .23,",
    "12, 1875, .21,",
    "13, 1875, .21, 17-4PH H900",
    "14, 2150, .20, 304 stainless annealed",
    "15, 1150, .20, Grey iron EN-GJL-250",
    "16, 1350, .28, Grey iron EN-GJL-250",
    "17, 1225, .25, Ductile iron 60-40-18 / EN-GJS-400",
    "18, 1350, .28,",
    "19, 1225, .25, Malleable iron A47",
    "20, 1420, .30,",
    "21, 700, .25, 5083-H111",
    "22, 800, .25, 6061-T6",
    "23, 700, .25,",
    "24, 700, .25, 'Cast aluminium up to 12 % Si, cured'",
    "25, 750, .25,",
    "26, 700, .27, C360 free-cutting brass",
    "27, 700, .27, 'C260 brass, hard'",
    "28, 700, .27, C110 copper",
    "31, 2600, .24,",
    "32, 3100, .24,",
    "33, 3300, .24,",
    "34, 3300, .24,",
    "35, 3300, .24,",
    "36, 1700, .23, 'Titanium, commercially pure'",
    "36, 1160, .24, 'Titanium, commercially pure'",
    "37, 2110, .22, Ti-6Al-4V",
    "37, 1245, .24, Ti-6Al-4V"
  })
  void theClassesOfTheStandard(String group, double kc, double mc, @Nullable String stock) {
    constants(CLASSES, "class " + group, kc, mc, stock);
  }

  @ParameterizedTest(name = "{0}: kc1.1 {1}, mc {2}")
  @CsvSource({
    "St50, 1990, .26, E295 (St 50)",
    "St60, 2110, .17, E335 (St 60)",
    "St70, 2260, .30, E360 (St 70)",
    "C15, 1820, .22, 1018 cold drawn",
    "C35, 1860, .20, C35 annealed",
    "C45, 2220, .14, 1045 hot rolled",
    "C60, 2130, .18, C60 annealed",
    "16MnCr5, 2100, .26, 16MnCr5 annealed",
    "18CrNi6, 2260, .30,",
    "34CrMo4, 2240, .21, 34CrMo4 annealed",
    "42CrMo4, 2500, .26, 4140 / 42CrMo4 annealed",
    "50CrV4, 2220, .26, 50CrV4 annealed",
    "55NiCrMoV6, 1740, .24, 55NiCrMoV6 annealed",
    "GS-45, 1600, .17, Cast steel GS-45",
    "GS-52, 1800, .16,",
    "GG-20, 1020, .25, Grey iron ASTM class 20",
    "GG-25, 1160, .26, Grey iron EN-GJL-250",
    "brass, 780, .18, C360 free-cutting brass",
    "cast aluminium, 640, .25, 'Cast aluminium up to 12 % Si, cured'",
    "magnesium, 240, .34, Magnesium AZ31B"
  })
  void theGradesOfTheTextbooks(String grade, double kc, double mc, @Nullable String stock) {
    constants(GRADES, grade, kc, mc, stock);
  }

  private static void properties(
      PublishedTable table, String name, double modulusGpa, double yieldMpa) {
    Material stock = stock(name);
    table
        .row(name)
        .held("E", "GPa", modulusGpa, stock.youngsModulusPa().times(1e-9), 1e-6)
        .held("yield", "MPa", yieldMpa, stock.yieldPa().times(1e-6), 1e-6);
  }

  @ParameterizedTest(name = "{0}: E {1} GPa, yield {2} MPa")
  @CsvSource({
    "S235 / A36 hot rolled, 200, 250",
    "1020 hot rolled, 200, 221",
    "1020 cold drawn, 200, 414",
    "1045 hot rolled, 200, 310",
    "1045 cold drawn, 200, 552",
    "4140 / 42CrMo4 annealed, 205, 414",
    "4140 / 42CrMo4 normalised, 205, 621",
    "304 stainless annealed, 193, 207",
    "6061-T6, 68.9, 255",
    "6061-T6, 68.9, 276",
    "7075-T6, 71.7, 503",
    "7075-T6, 71.7, 483",
    "2014-T6, 73.1, 414",
    "Malleable iron A47, 165, 228",
    "'C260 brass, hard', 110, 434",
    "C110 copper, 115, 69",
    "C110 copper, 117, 310",
    "Ti-6Al-4V, 113.8, 827",
    "Ti-6Al-4V, 120, 924",
    "Grey iron ASTM class 20, 67, 138",
    "Grey iron ASTM class 20, 69, 179"
  })
  void stiffnessAndYieldAsRead(String name, double modulusGpa, double yieldMpa) {
    properties(PROPERTIES, name, modulusGpa, yieldMpa);
  }

  @ParameterizedTest(name = "{0}: E {1} GPa, yield {2} MPa")
  @CsvSource({
    "S235 / A36 hot rolled, 200, 235",
    "1018 cold drawn, 205, 370",
    "4340 normalised, 205, 860",
    "O1 tool steel annealed, 210, 350",
    "D2 tool steel annealed, 210, 450",
    "316 stainless annealed, 193, 205",
    "316 stainless annealed, 193, 290",
    "17-4PH H900, 197, 1170",
    "2024-T3, 73.1, 345",
    "5083-H111, 71, 145",
    "Grey iron EN-GJL-250, 103, 250",
    "Grey iron EN-GJL-250, 118, 250",
    "Ductile iron 60-40-18 / EN-GJS-400, 165, 276",
    "C360 free-cutting brass, 97, 124",
    "C360 free-cutting brass, 97, 310",
    "Magnesium AZ31B, 45, 200"
  })
  void stiffnessAndYieldFromMemory(String name, double modulusGpa, double yieldMpa) {
    properties(RECALLED, name, modulusGpa, yieldMpa);
  }

  /** Where a range is printed the shop's one value must lie in it, else within 1 %. */
  @ParameterizedTest(name = "{0}: rho {1} to {2} kg/m3, nu {3} to {4}")
  @CsvSource({
    "S235 / A36 hot rolled, 7850, 7850, .29, .32",
    "1018 cold drawn, 7870, 7870, .29, .29",
    "1020 hot rolled, 7830, 7830, .32, .32",
    "1045 hot rolled, 7830, 7830, .29, .32",
    "4140 / 42CrMo4 annealed, 7830, 7830, .29, .32",
    "304 stainless annealed, 7860, 8000, .27, .29",
    "316 stainless annealed, 8000, 8000, .27, .30",
    "17-4PH H900, 7800, 7800, .27, .27",
    "6061-T6, 2700, 2710, .33, .35",
    "7075-T6, 2810, 2810, .33, .33",
    "2014-T6, 2790, 2790, .35, .35",
    "2024-T3, 2780, 2780, .33, .33",
    "5083-H111, 2660, 2660, .33, .33",
    "Grey iron ASTM class 20, 7150, 7190, .22, .28",
    "Grey iron EN-GJL-250, 7200, 7200, .26, .26",
    "Ductile iron 60-40-18 / EN-GJS-400, 7100, 7150, .275, .28",
    "Malleable iron A47, 7200, 7300, .27, .27",
    "C360 free-cutting brass, 8500, 8500, .31, .34",
    "'C260 brass, hard', 8530, 8530, .33, .33",
    "C110 copper, 8890, 8890, .33, .34",
    "Ti-6Al-4V, 4430, 4430, .33, .36",
    "Magnesium AZ31B, 1770, 1770, .35, .35"
  })
  void densityAndPoissonsRatio(
      String name, double leastRho, double greatestRho, double leastNu, double greatestNu) {
    Material stock = stock(name);
    double rho = Math.max(leastRho, Math.min(stock.densityKgPerM3(), greatestRho));
    double nu = Math.max(leastNu, Math.min(stock.poissonsRatio(), greatestNu));
    PROPERTIES
        .row(name)
        .percent("density", "kg/m3", rho, stock.densityKgPerM3(), 1)
        .figure("nu", "", nu, stock.poissonsRatio(), 1e-9);
  }

  @ParameterizedTest(name = "{1} in {0}: {2} m/min")
  @CsvSource({
    "4140 / 42CrMo4 annealed, HSS, 10",
    "Grey iron EN-GJL-250, HSS, 20",
    "1018 cold drawn, HSS, 28",
    "'C260 brass, hard', HSS, 45",
    "C110 copper, HSS, 60",
    "6061-T6, HSS, 100",
    "1018 cold drawn, CARBIDE, 200",
    "1018 cold drawn, CARBIDE, 170",
    "1018 cold drawn, CARBIDE, 130",
    "C60 annealed, CARBIDE, 150",
    "C60 annealed, CARBIDE, 90",
    "C60 annealed, CARBIDE, 75",
    "Cast steel GS-45, CARBIDE, 80",
    "Cast steel GS-45, CARBIDE, 75",
    "Cast steel GS-45, CARBIDE, 50",
    "304 stainless annealed, CARBIDE, 125",
    "304 stainless annealed, CARBIDE, 115",
    "Grey iron EN-GJL-250, CARBIDE, 150",
    "Grey iron EN-GJL-250, CARBIDE, 130",
    "Grey iron EN-GJL-250, CARBIDE, 110",
    "6061-T6, CARBIDE, 600"
  })
  void speedsOfTheDataHandbook(String name, ToolMaterial tool, double metresPerMin) {
    speed(name, tool, metresPerMin);
  }

  @ParameterizedTest(name = "{1} in {0}: {2} ft/min")
  @CsvSource({
    // table of a scientific-apparatus shop
    "Magnesium AZ31B, HSS, 300",
    "6061-T6, HSS, 250",
    "C360 free-cutting brass, HSS, 200",
    "C110 copper, HSS, 70",
    "Grey iron ASTM class 20, HSS, 120",
    "Grey iron EN-GJL-250, HSS, 80",
    "1018 cold drawn, HSS, 110",
    "Cast steel GS-45, HSS, 50",
    "4140 / 42CrMo4 normalised, HSS, 60",
    "O1 tool steel annealed, HSS, 60",
    "304 stainless annealed, HSS, 30",
    "Ti-6Al-4V, HSS, 30",
    // manual of a small mill
    "6061-T6, HSS, 300",
    "C360 free-cutting brass, HSS, 150",
    "C110 copper, HSS, 100",
    "Grey iron ASTM class 20, HSS, 80",
    "Grey iron EN-GJL-250, HSS, 50",
    "1018 cold drawn, HSS, 90",
    "4140 / 42CrMo4 normalised, HSS, 40",
    "O1 tool steel annealed, HSS, 50",
    "304 stainless annealed, HSS, 60",
    "Ti-6Al-4V, HSS, 50",
    // course sheet
    "1018 cold drawn, HSS, 80",
    "1018 cold drawn, HSS, 100",
    "1018 cold drawn, CARBIDE, 300",
    "1018 cold drawn, CARBIDE, 500",
    "1045 hot rolled, HSS, 70",
    "1045 hot rolled, HSS, 90",
    "1045 hot rolled, CARBIDE, 250",
    "1045 hot rolled, CARBIDE, 400",
    "4140 / 42CrMo4 annealed, HSS, 60",
    "4140 / 42CrMo4 annealed, HSS, 80",
    "4140 / 42CrMo4 annealed, CARBIDE, 200",
    "4140 / 42CrMo4 annealed, CARBIDE, 350",
    "304 stainless annealed, HSS, 40",
    "304 stainless annealed, CARBIDE, 150",
    "304 stainless annealed, CARBIDE, 250",
    "6061-T6, HSS, 200",
    "6061-T6, CARBIDE, 800",
    "6061-T6, CARBIDE, 1500",
    "C360 free-cutting brass, HSS, 250",
    "C360 free-cutting brass, CARBIDE, 500",
    "C360 free-cutting brass, CARBIDE, 800",
    "Grey iron EN-GJL-250, CARBIDE, 250",
    "Grey iron EN-GJL-250, CARBIDE, 400"
  })
  void speedsOfTheShopTables(String name, ToolMaterial tool, double feetPerMin) {
    speed(name, tool, feetPerMin * 0.3048);
  }

  private static void speed(String name, ToolMaterial tool, double metresPerMin) {
    CuttingRange range = stock(name).rangeFor(tool);
    Band band = Band.between(range.leastSpeedMPerS() * 60, range.greatestSpeedMPerS() * 60);
    SPEEDS.row(name + ", " + tool.words()).held("v_c", "m/min", metresPerMin, band, ROUNDED_SPEED);
  }

  @ParameterizedTest(name = "{1} in {0}: {2} to {3} in a tooth")
  @CsvSource({
    "1018 cold drawn, HSS, .002, .005", "1018 cold drawn, CARBIDE, .003, .008",
    "6061-T6, HSS, .005, .010", "6061-T6, CARBIDE, .005, .015",
    "C360 free-cutting brass, HSS, .003, .008", "C360 free-cutting brass, CARBIDE, .005, .010",
    "304 stainless annealed, HSS, .001, .003", "304 stainless annealed, CARBIDE, .002, .005"
  })
  void feedsOfTheCourseSheet(String name, ToolMaterial tool, double least, double greatest) {
    CuttingRange range = stock(name).rangeFor(tool);
    Band band = Band.between(range.leastFeedPerToothM() * 1e3, range.greatestFeedPerToothM() * 1e3);
    SPEEDS
        .row(name + ", " + tool.words())
        .held("f_z, least", "mm", least * 25.4, band, ROUNDED_FEED)
        .held("f_z, greatest", "mm", greatest * 25.4, band, ROUNDED_FEED);
  }

  private static final PublishedTable FACE_FEEDS =
      new PublishedTable(
          Subject.MATERIAL,
          "table of a scientific-apparatus shop, feeds of face mills in HSS; half of them for the"
              + " end mills that the shop's range is for",
          SourceTag.FOUND,
          ResultKind.STORED);

  /**
   * Its least feeds are far under those of the other tables and its greatest ones over: what must
   * hold is that the two ranges have a feed in common. The row of copper prints .04 in where .004
   * in is meant.
   */
  @ParameterizedTest(name = "{0}: half of {1} to {2} in a tooth")
  @CsvSource({
    "6061-T6, .005, .020",
    "C360 free-cutting brass, .004, .020",
    "C110 copper, .004, .010",
    "Grey iron ASTM class 20, .004, .016",
    "Grey iron EN-GJL-250, .004, .010"
  })
  void feedsOfTheScientificApparatusShop(String name, double least, double greatest) {
    CuttingRange range = stock(name).rangeFor(ToolMaterial.HSS);
    double leastMm = Math.max(least / 2 * 25.4, range.leastFeedPerToothM() * 1e3);
    Band printed = Band.between(least / 2 * 25.4, greatest / 2 * 25.4);
    FACE_FEEDS
        .row(name)
        .held("f_z, least of both", "mm", leastMm, printed, ROUNDED_FEED)
        .held(
            "f_z, middle of the print",
            "mm",
            printed.likely(),
            Band.between(range.leastFeedPerToothM() * 1e3, range.greatestFeedPerToothM() * 1e3),
            ROUNDED_FEED);
  }

  private static final PublishedTable CHUCK =
      new PublishedTable(
          Subject.MATERIAL,
          "lathe-chuck clamping standard RN 1391, table 2, kappa 45 deg, fitted by Kienzle's law",
          SourceTag.DERIVED);

  /** kc1.1 and m_c of the printed rows by a fit in logarithms [derived from found]. */
  @ParameterizedTest(name = "{0}: kc1.1 {1}, mc {2}")
  @CsvSource({
    "EN-GJL-250, 1186, .246, Grey iron EN-GJL-250",
    "St 42, 1811, .162, S235 / A36 hot rolled"
  })
  void theFitOfTheChuckStandardLiesInTheBandOfItsStock(
      String row, double kc, double mc, String name) {
    constants(CHUCK, row, kc, mc, name);
  }

  /** The two aluminium rows that one table has exchanged are the right way round here. */
  @ParameterizedTest
  @CsvSource({"7075-T6, 6061-T6"})
  void theHarderAluminiumYieldsLater(String harder, String softer) {
    assertThat(stock(harder).yieldPa().low()).isGreaterThan(1.5 * stock(softer).yieldPa().high());
  }
}
