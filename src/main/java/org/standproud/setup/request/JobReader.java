package org.standproud.setup.request;

import org.standproud.setup.Shelf;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;

/**
 * Reads jobs against one catalogue. Immutable; may be shared. For any input it returns a job or the
 * list of everything that is wrong, and throws nothing.
 */
public final class JobReader {

  private final Catalogue catalogue;

  /**
   * Keeps the catalogue in which names are looked up.
   *
   * @param catalogue the catalogue
   */
  public JobReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * Reads a tree.
   *
   * @param request the request
   */
  public JobReading read(JsonNode request) {
    ProblemCollector faults = new ProblemCollector();
    FieldLocation place = new FieldLocation("", SetupReader.units(request), catalogue, faults);
    Values values = JobFields.SHAPE.read(request, place);
    if (!faults.none()) {
      return new JobReading.Refused(faults.list());
    }
    checkShelf(JobFields.job(values, catalogue).shelf(), place.child(JobFields.SHELF.name()));
    return faults.none()
        ? new JobReading.Accepted(JobFields.job(values, catalogue))
        : new JobReading.Refused(faults.list());
  }

  /** An empty catalogue has no vise and no cutter to fall back on. */
  private static void checkShelf(Shelf shelf, FieldLocation place) {
    if (shelf.vises().isEmpty()) {
      place
          .child(JobFields.VISES.name())
          .fault(null, "the catalogue has no vise; name one", "6 inch vise", null, null);
    }
    if (shelf.cutters().isEmpty()) {
      place
          .child(JobFields.CUTTERS.name())
          .fault(null, "the catalogue has no cutter; name one", "2 inch face mill", null, null);
    }
  }
}
