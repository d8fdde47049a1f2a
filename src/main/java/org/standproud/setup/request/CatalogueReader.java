package org.standproud.setup.request;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Cutter;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads a catalogue from four YAML files, with the same fields as a request: {@code machines.yaml},
 * {@code vises.yaml}, {@code cutters.yaml}, {@code materials.yaml}. Each holds {@code units} and a
 * list under its own name.
 */
public final class CatalogueReader {

  private static final int MOST_ITEMS = 5000;

  private CatalogueReader() {}

  /**
   * Reads the four files of a folder.
   *
   * @param folder the folder
   * @throws IOException if a file cannot be read at all
   */
  public static CatalogueReading read(Path folder) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (CatalogueShelf shelf : CatalogueShelf.values()) {
      texts.put(file(shelf), Files.readString(folder.resolve(file(shelf))));
    }
    return read(texts);
  }

  /**
   * Reads the four files.
   *
   * @param texts YAML text by file name; a file left out is an empty shelf
   */
  public static CatalogueReading read(Map<String, String> texts) {
    List<Problem> problems = new ArrayList<>();
    Map<CatalogueShelf, Map<String, ObjectNode>> items = new EnumMap<>(CatalogueShelf.class);
    for (CatalogueShelf shelf : CatalogueShelf.values()) {
      items.put(shelf, shelf(shelf, texts.get(file(shelf)), problems));
    }
    return problems.isEmpty()
        ? new CatalogueReading.Loaded(CatalogueShelf.catalogue(items), items)
        : new CatalogueReading.Refused(problems);
  }

  /** A catalogue with the revision of its content. */
  static Catalogue sealed(
      Map<String, Machine> machines,
      Map<String, Vise> vises,
      Map<String, Cutter> cutters,
      Map<String, Material> materials) {
    String revision = CanonicalText.digest(new Catalogue(machines, vises, cutters, materials, ""));
    return new Catalogue(machines, vises, cutters, materials, revision);
  }

  private static String file(CatalogueShelf shelf) {
    return shelf.words() + ".yaml";
  }

  private static Map<String, ObjectNode> shelf(
      CatalogueShelf shelf, @Nullable String text, List<Problem> problems) {
    if (text == null) {
      return Map.of();
    }
    ProblemCollector faults = new ProblemCollector();
    Map<String, ObjectNode> items = Map.of();
    try {
      items = items(shelf.words(), shelf.kind(), RequestText.yaml(text), faults);
    } catch (RequestText.Malformed e) {
      faults.add(
          new Problem(
              "", null, "this is not well-formed YAML: " + e.getMessage(), null, null, null));
    }
    faults.list().forEach(p -> problems.add(inFile(file(shelf), p)));
    return items;
  }

  private static <P> Map<String, ObjectNode> items(
      String listName, CatalogueSection<P> kind, JsonNode file, ProblemCollector faults) {
    Choice<Map<String, P>, UnitSystem> unitsField =
        Choice.of("units", UnitSystem.class, m -> null, "units of plain numbers");
    UnitSystem units = SetupReader.units(file);
    FieldLocation place = new FieldLocation("", units, Catalogue.EMPTY, faults);
    ListField<Map<String, P>, P> list =
        new ListField<>(
            listName,
            kind.shape(),
            MOST_ITEMS,
            true,
            m -> List.copyOf(m.values()),
            "the " + listName);
    Values read = new ObjectSchema<>("file", List.of(unitsField, list)).read(file, place);
    List<Values> rows = read.get(list);
    refuseDoubles(rows, kind.name(), place.child(listName));
    return faults.none() ? withUnits(file.path(listName), kind.name().name(), units) : Map.of();
  }

  private static Map<String, ObjectNode> withUnits(
      JsonNode rows, String nameField, UnitSystem units) {
    Map<String, ObjectNode> items = new LinkedHashMap<>();
    for (JsonNode row : rows) {
      ObjectNode item = (ObjectNode) row.deepCopy();
      item.put(CatalogueShelf.UNITS, units.words());
      items.put(item.get(nameField).stringValue(), item);
    }
    return items;
  }

  private static void refuseDoubles(
      @Nullable List<Values> rows, Text<?> name, FieldLocation place) {
    Map<String, Integer> first = new LinkedHashMap<>();
    for (int i = 0; rows != null && i < rows.size(); i++) {
      String here = rows.get(i).get(name);
      Integer before = here == null ? null : first.putIfAbsent(here, i);
      if (here != null && before != null) {
        place
            .item(i)
            .child(name.name())
            .fault(null, "item " + before + " already has the name " + MessageText.shortened(here));
      }
    }
  }

  private static Problem inFile(String file, Problem p) {
    return new Problem(
        file + "#" + p.pointer(), p.value(), p.message(), p.allowed(), p.unit(), p.hint());
  }
}
