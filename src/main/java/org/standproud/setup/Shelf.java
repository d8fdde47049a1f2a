package org.standproud.setup;

import java.util.List;

/**
 * What is on hand for a job.
 *
 * @param vises the vises, at least one
 * @param cutters the cutters, at least one
 * @param packing packing for one jaw; may be empty
 * @param parallelsM heights of the pairs of parallels in m; empty if the stock has to sit on the
 *     bed of the vise
 */
public record Shelf(
    List<Vise> vises, List<Cutter> cutters, List<SparePacking> packing, List<Double> parallelsM) {

  /** Found in every drawer: soft copper wire and card. Common practice, no source. */
  public static final List<SparePacking> COMMON_PACKING =
      List.of(
          new SparePacking(PackingKind.CARD, PackingMaterial.PAPER, 0.4e-3),
          new SparePacking(PackingKind.WIRE, PackingMaterial.COPPER, 3e-3));

  /** Heights in m of an ordinary set of parallels. Common practice, no source. */
  public static final List<Double> COMMON_PARALLELS_M =
      List.of(5e-3, 10e-3, 14e-3, 18e-3, 20e-3, 24e-3, 28e-3, 32e-3, 36e-3, 40e-3, 45e-3);

  /** Copies the lists. */
  public Shelf {
    vises = List.copyOf(vises);
    cutters = List.copyOf(cutters);
    packing = List.copyOf(packing);
    parallelsM = List.copyOf(parallelsM);
  }
}
