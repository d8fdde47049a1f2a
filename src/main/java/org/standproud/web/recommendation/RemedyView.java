package org.standproud.web.recommendation;

import java.util.List;
import org.standproud.advice.compare.FieldChange;
import org.standproud.advice.remedy.Remedy;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.web.form.Shelves;

/**
 * A change as the page offers it.
 *
 * @param remedy the change
 * @param title the change, in words
 * @param changes every field that changes, in words
 * @param mark icon of its verdict
 * @param added time it adds, in words
 * @param request the changed set-up as form values
 */
public record RemedyView(
    Remedy remedy, String title, List<String> changes, String mark, String added, String request) {

  private static final double NO_TIME_MIN = 0.5;

  static RemedyView of(Remedy remedy, Catalogue catalogue) {
    return new RemedyView(
        remedy,
        String.join(", and ", remedy.kinds()),
        remedy.changes().stream().map(FieldChange::words).toList(),
        remedy.verdict().words().replace(' ', '-'),
        added(remedy.cost().added()),
        Shelves.request(remedy.changed(), catalogue, remedy.changed().units()).toString());
  }

  private static String added(double minutes) {
    if (Math.abs(minutes) < NO_TIME_MIN) {
      return "next to no time";
    }
    return "about " + Math.round(Math.abs(minutes)) + " min " + (minutes > 0 ? "more" : "less");
  }
}
