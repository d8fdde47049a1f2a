package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.standproud.mechanics.holding.jaw.BackingHold;
import org.standproud.mechanics.plate.BackedPlate;
import org.standproud.mechanics.plate.BackedPlate.Support;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.setup.Backing;
import org.standproud.setup.Band;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/**
 * The backing of a set-up as springs on the plate: one in the middle of what is short, two at a
 * quarter from the ends of what is longer than the plate is thick, each half as stiff.
 */
final class BackedStock {

  private static final double QUARTER = 0.25;

  private BackedStock() {}

  static BackedPlate of(Setup setup, PlateInput plate) {
    Stock stock = setup.stock();
    List<Support> supports = new ArrayList<>();
    for (Backing backing : touching(setup)) {
      double zM = Math.min(BackingHold.heightM(backing, setup.hold(), stock), plate.stickOutM());
      for (double xM : placesM(backing, stock)) {
        supports.add(new Support(new PlatePoint(xM, zM), backing.side() == JawSide.FIXED));
      }
    }
    return new BackedPlate(plate, supports);
  }

  private static List<Backing> touching(Setup setup) {
    return BackingHold.touching(setup.hold(), setup.stock());
  }

  private static double[] placesM(Backing backing, Stock stock) {
    double halfM = stock.lengthM() / 2;
    if (backing.lengthM() <= stock.thicknessM()) {
      return new double[] {backing.alongM()};
    }
    double fromM = Math.max(-halfM, backing.alongM() - backing.lengthM() / 2);
    double toM = Math.min(halfM, backing.alongM() + backing.lengthM() / 2);
    double inM = QUARTER * (toM - fromM);
    return new double[] {fromM + inM, toM - inM};
  }

  /** Stiffness of each spring in N/m. */
  static double[] springsNPerM(Setup setup, double place) {
    return shared(setup, backing -> BackingHold.stiffnessNPerM(backing).part(place));
  }

  /** Preload of each spring in N. */
  static double[] preloadsN(Setup setup, double place) {
    return shared(
        setup,
        backing -> {
          Band preloadN = backing.preloadN();
          return preloadN == null ? 0 : preloadN.part(place);
        });
  }

  private static double[] shared(Setup setup, ToDoubleFunction<Backing> whole) {
    return touching(setup).stream()
        .flatMapToDouble(
            backing -> {
              int parts = placesM(backing, setup.stock()).length;
              return DoubleStream.generate(() -> whole.applyAsDouble(backing) / parts).limit(parts);
            })
        .toArray();
  }
}
