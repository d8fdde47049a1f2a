package org.standproud.setup.request;

import java.util.List;
import java.util.Map;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.node.ObjectNode;

/** What came of reading the files of a catalogue. */
public sealed interface CatalogueReading {

  /**
   * The files say a catalogue.
   *
   * @param catalogue the catalogue
   * @param items its items as they were written, by shelf and name
   */
  record Loaded(Catalogue catalogue, Map<CatalogueShelf, Map<String, ObjectNode>> items)
      implements CatalogueReading {}

  /**
   * The files do not say a catalogue.
   *
   * @param problems everything that is wrong, at least one; pointers begin with the file name and
   *     {@code #}
   */
  record Refused(List<Problem> problems) implements CatalogueReading {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
