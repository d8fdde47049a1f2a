package org.standproud.assessment.job;

import java.util.List;
import org.standproud.advice.Wording;
import org.standproud.advice.job.JobPlan;
import org.standproud.advice.job.JobPlanner;
import org.standproud.advice.job.UnreachableFaceException;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.JobReference;
import org.standproud.setup.MillingJob;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.JobReader;
import org.standproud.setup.request.JobReading;
import org.standproud.setup.request.Problem;
import org.standproud.setup.units.QuantityKind;
import tools.jackson.databind.JsonNode;

/**
 * The route of a whole job. It is not recorded; send the set-up of a pass to be assessed to record
 * it.
 *
 * @param job the job, in ISA-95 terms, as sent
 * @param units the units of its numbers, unless a number names its own
 * @param ruleBase revision of the rule base that judged every pass
 * @param catalogue revision of the catalogue in which names were looked up
 * @param plan the route
 */
public record JobDocument(
    JobReference job, UnitSystem units, String ruleBase, String catalogue, JobPlan plan) {

  /**
   * Plans a job.
   *
   * @param request the request
   * @param catalogue the catalogue
   * @param ruleBase the rule base
   * @throws JobRejectedException if it does not describe a job, or nothing on hand reaches a face
   */
  static JobDocument of(JsonNode request, Catalogue catalogue, RuleBase ruleBase) {
    MillingJob job = read(request, catalogue);
    try {
      return new JobDocument(
          job.reference(),
          job.units(),
          ruleBase.revision().id(),
          catalogue.revision(),
          JobPlanner.plan(job, ruleBase, catalogue));
    } catch (UnreachableFaceException e) {
      throw new JobRejectedException(List.of(problem(e, job.units())));
    }
  }

  private static MillingJob read(JsonNode request, Catalogue catalogue) {
    JobReading reading = new JobReader(catalogue).read(request);
    if (reading instanceof JobReading.Accepted accepted) {
      return accepted.job();
    }
    throw new JobRejectedException(((JobReading.Refused) reading).problems());
  }

  private static Problem problem(UnreachableFaceException e, UnitSystem units) {
    String face = e.face().words();
    String least = "at least " + new Wording(units).words(QuantityKind.LENGTH, e.neededM());
    String unit = QuantityKind.LENGTH.unit(units).code();
    return switch (e.lack()) {
      case OPENING ->
          new Problem(
              "/shelf/vises", null, "no vise opens wide enough for " + face, least, unit, null);
      case DIAMETER ->
          new Problem(
              "/shelf/cutters",
              null,
              "no whole, sharp, right-hand cutter reaches over " + face,
              least + " in diameter",
              unit,
              null);
      case GRIP ->
          new Problem(
              "/shelf/parallels",
              null,
              "no parallels let the jaws grip below the cut on "
                  + face
                  + ", or no cutter is long enough to mill it standing",
              "stock " + least + " high above the parallels",
              unit,
              null);
    };
  }
}
