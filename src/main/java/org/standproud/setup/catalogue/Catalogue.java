package org.standproud.setup.catalogue;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.setup.Cutter;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.Vise;

/**
 * What a shop has on its shelves, by name, in the order of the names; immutable.
 *
 * @param machines machines by name
 * @param vises vises by name
 * @param cutters cutters by name
 * @param materials stock materials by name
 * @param revision SHA-256 of the content in hexadecimal: two catalogues with one revision hold the
 *     same numbers
 */
public record Catalogue(
    Map<String, Machine> machines,
    Map<String, Vise> vises,
    Map<String, Cutter> cutters,
    Map<String, Material> materials,
    String revision) {

  /** A catalogue with nothing in it: every item has to be described in the request. */
  public static final Catalogue EMPTY =
      new Catalogue(Map.of(), Map.of(), Map.of(), Map.of(), "empty");

  /** Copies the maps, sorted by name. */
  public Catalogue {
    machines = Collections.unmodifiableMap(new TreeMap<>(machines));
    vises = Collections.unmodifiableMap(new TreeMap<>(vises));
    cutters = Collections.unmodifiableMap(new TreeMap<>(cutters));
    materials = Collections.unmodifiableMap(new TreeMap<>(materials));
  }
}
