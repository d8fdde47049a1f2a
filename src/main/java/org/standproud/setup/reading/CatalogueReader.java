package org.standproud.setup.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Cutter;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;

/**
 * Reads a catalogue from four YAML files, with the same fields as a request: {@code machines.yaml},
 * {@code vises.yaml}, {@code cutters.yaml}, {@code materials.yaml}. Each holds {@code units} and a
 * list under its own name.
 */
public final class CatalogueReader {

  private static final int MOST_ITEMS = 5000;

  private static final Shelf<Machine> MACHINES =
      new Shelf<>("machines", MachineFields.SHAPE, MachineFields::machine, MachineFields.NAME);
  private static final Shelf<Vise> VISES =
      new Shelf<>("vises", ViseFields.SHAPE, ViseFields::vise, ViseFields.NAME);
  private static final Shelf<Cutter> CUTTERS =
      new Shelf<>("cutters", CutterFields.SHAPE, CutterFields::cutter, CutterFields.NAME);
  private static final Shelf<Material> MATERIALS =
      new Shelf<>("materials", MaterialFields.SHAPE, MaterialFields::material, MaterialFields.NAME);

  private CatalogueReader() {}

  /** One file: its list, the fields of an item, and how an item is made of them. */
  private record Shelf<P>(String name, Shape<P> shape, Function<Values, P> item, Text<P> itemName) {

    String file() {
      return name + ".yaml";
    }

    Parts<Map<String, P>, P> list() {
      return new Parts<>(
          name, shape, MOST_ITEMS, true, m -> List.copyOf(m.values()), "the " + name);
    }
  }

  /**
   * Reads the four files of a folder.
   *
   * @param folder the folder
   * @throws IOException if a file cannot be read at all
   */
  public static CatalogueReading read(Path folder) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    for (Shelf<?> shelf : List.of(MACHINES, VISES, CUTTERS, MATERIALS)) {
      texts.put(shelf.file(), Files.readString(folder.resolve(shelf.file())));
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
    Map<String, Machine> machines = shelf(MACHINES, texts, problems);
    Map<String, Vise> vises = shelf(VISES, texts, problems);
    Map<String, Cutter> cutters = shelf(CUTTERS, texts, problems);
    Map<String, Material> materials = shelf(MATERIALS, texts, problems);
    if (!problems.isEmpty()) {
      return new CatalogueReading.Refused(problems);
    }
    String revision = CanonicalText.digest(new Catalogue(machines, vises, cutters, materials, ""));
    return new CatalogueReading.Loaded(
        new Catalogue(machines, vises, cutters, materials, revision));
  }

  private static <P> Map<String, P> shelf(
      Shelf<P> shelf, Map<String, String> texts, List<Problem> problems) {
    String text = texts.get(shelf.file());
    if (text == null) {
      return Map.of();
    }
    Faults faults = new Faults();
    Map<String, P> items = Map.of();
    try {
      items = items(shelf, RequestText.yaml(text), faults);
    } catch (RequestText.Malformed e) {
      faults.add(
          new Problem(
              "", null, "this is not well-formed YAML: " + e.getMessage(), null, null, null));
    }
    faults.list().forEach(p -> problems.add(inFile(shelf.file(), p)));
    return items;
  }

  private static <P> Map<String, P> items(Shelf<P> shelf, JsonNode file, Faults faults) {
    Choice<Map<String, P>, UnitSystem> unitsField =
        Choice.of("units", UnitSystem.class, m -> null, "units of plain numbers");
    Place place = new Place("", SetupReader.units(file), Catalogue.EMPTY, faults);
    Parts<Map<String, P>, P> list = shelf.list();
    Values read = new Shape<>("file", List.of(unitsField, list)).read(file, place);
    List<Values> rows = read.get(list);
    Map<String, P> items = new LinkedHashMap<>();
    refuseDoubles(rows, shelf.itemName(), place.child(shelf.name()));
    if (faults.none() && rows != null) {
      rows.forEach(row -> items.put(row.need(shelf.itemName()), shelf.item().apply(row)));
    }
    return items;
  }

  private static void refuseDoubles(@Nullable List<Values> rows, Text<?> name, Place place) {
    Map<String, Integer> first = new LinkedHashMap<>();
    for (int i = 0; rows != null && i < rows.size(); i++) {
      String here = rows.get(i).get(name);
      Integer before = here == null ? null : first.putIfAbsent(here, i);
      if (here != null && before != null) {
        place
            .item(i)
            .child(name.name())
            .fault(null, "item " + before + " already has the name " + Words.shortened(here));
      }
    }
  }

  private static Problem inFile(String file, Problem p) {
    return new Problem(
        file + "#" + p.pointer(), p.value(), p.message(), p.allowed(), p.unit(), p.hint());
  }
}
