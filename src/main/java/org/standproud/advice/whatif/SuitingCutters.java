package org.standproud.advice.whatif;

import java.util.Comparator;
import java.util.List;
import org.standproud.setup.Cutter;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;

/** The cutters of a shop that suit a job, the likeliest diameter first. */
public final class SuitingCutters {

  /** A machinist first tries a cutter a third wider than the stock. */
  private static final double WIDER_THAN_STOCK = 1.33;

  private final Setup setup;

  private SuitingCutters(Setup setup) {
    this.setup = setup;
  }

  /**
   * The cutters other than the one proposed: whole and not worn, long enough, of the same hand;
   * square on a side, wider than the stock on a top edge.
   *
   * @param setup the job
   * @param shop the shop's cutters
   */
  public static List<Cutter> of(Setup setup, Catalogue shop) {
    SuitingCutters suiting = new SuitingCutters(setup);
    double wanted = suiting.wantedM();
    return shop.cutters().values().stream()
        .filter(c -> !c.name().equals(setup.cutter().name()))
        .filter(suiting::suits)
        .sorted(Comparator.comparingDouble(c -> Math.abs(Math.log(c.diameterM() / wanted))))
        .toList();
  }

  private double wantedM() {
    boolean keep = setup.cut().operation() == Operation.BROAD_SIDE || spans(setup.cutter());
    return keep ? setup.cutter().diameterM() : WIDER_THAN_STOCK * setup.stock().thicknessM();
  }

  private boolean spans(Cutter c) {
    return c.diameterM() > setup.stock().thicknessM();
  }

  private boolean suits(Cutter c) {
    boolean whole = c.missingTeeth().isEmpty() && c.chippedTeeth().isEmpty();
    boolean sharp = c.edge() == EdgeCondition.FRESH || c.edge() == EdgeCondition.USED;
    boolean square = c.enteringAngleRad() > Math.toRadians(89);
    return whole
        && sharp
        && c.spin() == setup.cutter().spin()
        && c.greatestDepthM() >= setup.cut().axialDepthM()
        && (setup.cut().operation() == Operation.TOP_EDGE ? spans(c) : square);
  }
}
