package org.standproud.advice.job;

import java.util.Optional;
import org.standproud.advice.plan.PassPlan;
import org.standproud.setup.MillingJob;

/**
 * How the stock is shared out: half from each of two opposite faces, against warp, and of that the
 * finishing allowance for the last pass; common practice, no source.
 *
 * @param sideM from each broad side in m
 * @param edgeM from each long edge in m
 * @param endM from each end in m
 * @param allowanceM what is left for the last pass in m
 */
record Removal(double sideM, double edgeM, double endM, double allowanceM) {

  /** Less than this is rounding, not stock. */
  private static final double NOTHING_M = 1e-7;

  static Removal of(MillingJob job) {
    return new Removal(
        (job.blank().thicknessM() - job.finished().thicknessM()) / 2,
        (job.blank().heightM() - job.finished().heightM()) / 2,
        (job.blank().lengthM() - job.finished().lengthM()) / 2,
        PassPlan.finishAllowanceM(job.units()));
  }

  /** Roughing and finishing in one clamping; empty if nothing comes off. */
  Optional<FaceCut> whole(Face face) {
    double all = allM(face);
    return all < NOTHING_M
        ? Optional.empty()
        : Optional.of(new FaceCut(face, roughM(face), all - roughM(face)));
  }

  /** Roughing alone; empty if there is none. */
  Optional<FaceCut> rough(Face face) {
    return roughM(face) > 0 ? Optional.of(new FaceCut(face, roughM(face), 0)) : Optional.empty();
  }

  /** Finishing alone; empty if nothing comes off. */
  Optional<FaceCut> finish(Face face) {
    double finishM = allM(face) - roughM(face);
    return finishM < NOTHING_M ? Optional.empty() : Optional.of(new FaceCut(face, 0, finishM));
  }

  private double roughM(Face face) {
    double rough = allM(face) - allowanceM;
    return rough < NOTHING_M ? 0 : rough;
  }

  private double allM(Face face) {
    return switch (face) {
      case SIDE_A, SIDE_B -> sideM;
      case EDGE_A, EDGE_B -> edgeM;
      case END_A, END_B -> endM;
    };
  }
}
