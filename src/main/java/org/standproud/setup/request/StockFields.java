package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.LENGTH;

import java.util.List;
import org.standproud.setup.Material;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.StockCondition;
import org.standproud.setup.StockSurface;
import org.standproud.setup.catalogue.Catalogue;

/** The fields of the stock. */
public final class StockFields {

  public static final Quantity<Stock> LENGTH_X =
      Quantity.of("length", LENGTH, 5e-3, 3, Stock::lengthM, "length along the jaws")
          .called("stock length");
  public static final Quantity<Stock> THICKNESS =
      Quantity.of("thickness", LENGTH, 0.5e-3, 0.5, Stock::thicknessM, "thickness across the jaws")
          .called("stock thickness");
  public static final Quantity<Stock> HEIGHT =
      Quantity.of("height", LENGTH, 5e-3, 1, Stock::heightM, "whole height, gripped part included")
          .called("stock height");
  public static final ObjectField<Stock, Material> MATERIAL =
      ObjectField.onShelf(
          "material",
          MaterialFields.SHAPE,
          Catalogue::materials,
          () -> SpokenShop.MATERIALS,
          Stock::material,
          "what it is made of");
  public static final Choice<Stock, StockSurface> SURFACE =
      Choice.<Stock, StockSurface>of(
              "surface",
              StockSurface.class,
              Stock::surface,
              "condition of the faces the jaws bear on")
          .alsoSaid("bright drawn", StockSurface.MACHINED)
          .called("gripped faces")
          .mayBeUnknown();
  public static final Quantity<Stock> HIGH_SPOT =
      Quantity.<Stock>of(
              "highSpot",
              LENGTH,
              0,
              0.01,
              Stock::highSpotM,
              "greatest height of a high spot on a gripped face")
          .mayBeUnknown();
  public static final BooleanField<Stock> DEBURRED =
      new BooleanField<>(
          "deburred", false, Stock::deburred, "whether the gripped edges were deburred");

  public static final Choice<Stock, StockCondition> CONDITION =
      Choice.<Stock, StockCondition>of(
              "condition",
              StockCondition.class,
              Stock::condition,
              "how it was delivered, which decides the stress that is locked in it")
          .mayBeUnknown();

  static final ObjectSchema<Stock> SHAPE =
      new ObjectSchema<>(
          "stock",
          List.of(LENGTH_X, THICKNESS, HEIGHT, MATERIAL, SURFACE, HIGH_SPOT, DEBURRED, CONDITION),
          (v, place) -> OrderCheck.check(v, HIGH_SPOT, THICKNESS, place));

  private StockFields() {}

  static Stock stock(Values v) {
    return StockBuilder.builder()
        .lengthM(v.need(LENGTH_X))
        .thicknessM(v.need(THICKNESS))
        .heightM(v.need(HEIGHT))
        .material(MaterialFields.material(v.need(MATERIAL)))
        .surface(v.get(SURFACE))
        .highSpotM(v.get(HIGH_SPOT))
        .deburred(v.get(DEBURRED))
        .condition(v.get(CONDITION))
        .build();
  }
}
