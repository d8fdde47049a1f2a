package org.standproud.mechanics.holding;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.holding.contact.LineContact;
import org.standproud.mechanics.holding.contact.StockBow;
import org.standproud.mechanics.holding.jaw.JawBearings;
import org.standproud.mechanics.holding.jaw.Rocking;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Material;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;

/**
 * What a line of packing, or an unknown line of contact, does to the stock and to itself.
 *
 * @param yieldRatio Hertz pressure over what begins to flow the softer of wire and stock; zero
 *     without a wire
 * @param bowMargin stock's yield stress over its bending stress in the grip
 * @param bowM bow of the stock over the gripped height in m
 */
record PackingLine(Band yieldRatio, Band bowMargin, Band bowM) {

  /** Mean pressure over yield of a wire pressed to a strip three times as wide as it is high. */
  private static final double FLOWS = 2 / Math.sqrt(3) * (0.75 + 3 / 4.0);

  static PackingLine of(HoldingInput input, HoldingEnds ends) {
    Packing wire = line(input, JawSide.MOVABLE, ends);
    wire = wire == null ? line(input, JawSide.FIXED, ends) : wire;
    Material material = input.stock().material();
    HoldingEnd likely = ends.likely();
    Band yield = material.yieldPa();
    within("yield stress", yield.low(), 1e6, 5e9, "Pa");
    if (wire == null && ends.rocking() == Rocking.NO) {
      return new PackingLine(Band.exactly(0), Band.exactly(Margin.GREATEST), Band.exactly(0));
    }
    double depth = wire == null ? likely.gripM() / 2 : wire.depthM();
    StockBow soft = bow(input, likely, ends.clampingForceN().high(), depth, Band::low);
    StockBow mean = bow(input, likely, ends.clampingForceN().likely(), depth, Band::likely);
    StockBow stiff = bow(input, likely, ends.clampingForceN().low(), depth, Band::high);
    return new PackingLine(
        wire == null || wire.kind() != PackingKind.WIRE
            ? Band.exactly(0)
            : yieldRatio(wire, material, ends.clampingForceN(), likely.lengthM()),
        Band.spanning(
            Margin.of(yield.likely(), mean.stressPa()),
            Margin.of(yield.low(), soft.stressPa()),
            Margin.of(yield.high(), stiff.stressPa())),
        Band.spanning(mean.bowM(), soft.bowM(), wire == null ? 0 : stiff.bowM()));
  }

  /**
   * Hertz pressure of a wire over what begins to flow the stock; nothing for packing without a
   * line. A wire that flows first is pressed flat: at a width w and height h its mean pressure is
   * {@code 2/sqrt(3) (3/4 + w/(4 h))} times its yield (plane strain between rough flats, slip
   * lines; Johnson and Mellor, Engineering Plasticity, 1973, from memory), 1.73 at three times as
   * wide as high. So a soft wire dents nothing harder than itself.
   */
  static double stockYieldRatio(
      Hold hold,
      Material material,
      HoldDraw draw,
      double lengthM,
      double stockYoungsPa,
      double stockYieldPa) {
    double ratio = 0;
    for (Packing piece : hold.packing()) {
      PackingBody body = PackingBody.of(piece.material());
      if (piece.kind() == PackingKind.WIRE) {
        double wireYieldPa = body.yieldPa().part(draw.packingYieldPlace());
        LineContact contact =
            at(
                piece,
                body,
                material,
                draw.clampingForceN() / lengthM,
                body.youngsPa().part(draw.packingPlace()),
                stockYoungsPa);
        double flowing = FLOWS * wireYieldPa / (LineContact.YIELD_ONSET * stockYieldPa);
        double pressed = contact.yieldRatio(stockYieldPa);
        ratio = Math.max(ratio, wireYieldPa < stockYieldPa ? Math.min(pressed, flowing) : pressed);
      }
    }
    return ratio;
  }

  private static @Nullable Packing line(HoldingInput input, JawSide side, HoldingEnds ends) {
    return JawBearings.lineDepthM(input.hold(), side, ends.likely().gripM()) == null
        ? null
        : JawBearings.packing(input.hold(), side);
  }

  private static StockBow bow(
      HoldingInput input,
      HoldingEnd end,
      double forceN,
      double depthM,
      ToDoubleFunction<Band> youngs) {
    Material material = input.stock().material();
    return StockBow.of(
        forceN,
        depthM,
        end.gripM(),
        end.lengthM(),
        input.stock().thicknessM(),
        youngs.applyAsDouble(material.youngsModulusPa()),
        material.poissonsRatio());
  }

  /** The softer body flows first: its yield is the lesser of wire and stock. */
  private static Band yieldRatio(Packing wire, Material stock, Band forceN, double lengthM) {
    PackingBody body = PackingBody.of(wire.material());
    return Band.spanning(
        at(
                wire,
                body,
                stock,
                forceN.likely() / lengthM,
                body.youngsPa().likely(),
                stock.youngsModulusPa().likely())
            .yieldRatio(Math.min(body.yieldPa().likely(), stock.yieldPa().likely())),
        at(
                wire,
                body,
                stock,
                forceN.low() / lengthM,
                body.youngsPa().low(),
                stock.youngsModulusPa().low())
            .yieldRatio(Math.min(body.yieldPa().high(), stock.yieldPa().high())),
        at(
                wire,
                body,
                stock,
                forceN.high() / lengthM,
                body.youngsPa().high(),
                stock.youngsModulusPa().high())
            .yieldRatio(Math.min(body.yieldPa().low(), stock.yieldPa().low())));
  }

  private static LineContact at(
      Packing wire,
      PackingBody body,
      Material stock,
      double perLengthNPerM,
      double wireYoungsPa,
      double stockYoungsPa) {
    return new LineContact(
        perLengthNPerM,
        wire.sizeM() / 2,
        LineContact.contactModulusPa(
            wireYoungsPa, body.poisson(), stockYoungsPa, stock.poissonsRatio()));
  }
}
