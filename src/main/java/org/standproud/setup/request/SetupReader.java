package org.standproud.setup.request;

import java.util.List;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;

/**
 * Reads requests against one catalogue. Immutable; may be shared. For any input it returns a set-up
 * or the list of everything that is wrong, and throws nothing.
 */
public final class SetupReader {

  private final Catalogue catalogue;

  /**
   * Keeps the catalogue in which names are looked up.
   *
   * @param catalogue the catalogue
   */
  public SetupReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * Reads JSON text.
   *
   * @param json one JSON object
   */
  public Reading readJson(String json) {
    try {
      return read(RequestText.json(json));
    } catch (RequestText.Malformed e) {
      return new Reading.Refused(
          List.of(
              new Problem(
                  "", null, "this is not well-formed JSON: " + e.getMessage(), null, null, null)));
    }
  }

  /**
   * Reads a tree, of JSON or YAML.
   *
   * @param request the request
   */
  public Reading read(JsonNode request) {
    ProblemCollector faults = new ProblemCollector();
    FieldLocation place = new FieldLocation("", units(request), catalogue, faults);
    Values values = RequestFields.SHAPE.read(request, place);
    settle(values, request, place);
    if (faults.none()) {
      checkPlan(RequestFields.setup(values), place.child(RequestFields.PASSES.name()));
    }
    return faults.none()
        ? new Reading.Accepted(RequestFields.setup(values))
        : new Reading.Refused(faults.list());
  }

  /**
   * What is known so far of a set-up that is still being described.
   *
   * @param request a request, perhaps with faults
   */
  public KnownParts known(JsonNode request) {
    FieldLocation place = new FieldLocation("", units(request), catalogue, new ProblemCollector());
    Values values = RequestFields.SHAPE.read(request, place);
    settle(values, request, place);
    return KnownParts.of(values);
  }

  /** A plan gives as much of each pass as the cut does, and contains the cut. */
  private static void checkPlan(Setup setup, FieldLocation place) {
    boolean side = setup.cut().operation() == Operation.BROAD_SIDE;
    for (int i = 0; i < setup.passes().size(); i++) {
      boolean hasRadial = setup.passes().get(i).radialDepthM() != null;
      FieldLocation radial = place.item(i).child(CutFields.PLANNED_RADIAL_DEPTH.name());
      if (side && !hasRadial) {
        radial.fault(null, "enter the radial depth");
      } else if (hasRadial && !side) {
        radial.fault(null, "a pass over a top edge takes an axial depth only");
      }
    }
    boolean planned = setup.passes().stream().anyMatch(pass -> pass.fits(setup.asked()));
    if (!planned && !setup.passes().isEmpty()) {
      place.fault(null, "the cut is none of these passes");
    }
  }

  private static void settle(Values values, JsonNode request, FieldLocation place) {
    Values cut = values.get(RequestFields.CUT);
    JsonNode node = request.get(RequestFields.CUT.name());
    if (cut == null || node == null || !node.isObject()) {
      return;
    }
    Values stock = values.get(RequestFields.STOCK);
    Values cutter = values.get(RequestFields.CUTTER);
    new PlannedPassFields(
            cut,
            stock == null ? new Values() : stock,
            cutter == null ? new Values() : cutter,
            node,
            place.child(RequestFields.CUT.name()))
        .settle();
  }

  /** The units of plain numbers; metric while the field itself is at fault, to find the rest. */
  static UnitSystem units(JsonNode request) {
    JsonNode units = request.get(RequestFields.UNITS.name());
    boolean inch =
        units != null && units.isString() && UnitSystem.INCH.words().equals(units.stringValue());
    return inch ? UnitSystem.INCH : UnitSystem.METRIC;
  }
}
