package org.standproud.setup.request;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Cutter;
import org.standproud.setup.JawSide;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.Vise;

/**
 * What is known so far of a set-up that is still being described; null where nothing is known, or
 * what stands there is at fault. Lengths in m.
 *
 * @param lengthM length of the stock
 * @param thicknessM thickness of the stock
 * @param heightM height of the stock
 * @param material what the stock is made of
 * @param vise the vise
 * @param gripDepthM height of stock inside the jaws
 * @param packing the pieces of packing that are fully described
 * @param machine the machine
 * @param cutter the cutter
 * @param operation which face is milled
 * @param axialDepthM depth of cut along the cutter axis
 * @param offsetM cutter axis from the middle of the thickness, positive toward the fixed jaw
 */
public record KnownParts(
    @Nullable Double lengthM,
    @Nullable Double thicknessM,
    @Nullable Double heightM,
    @Nullable Material material,
    @Nullable Vise vise,
    @Nullable Double gripDepthM,
    List<Packing> packing,
    @Nullable Machine machine,
    @Nullable Cutter cutter,
    @Nullable Operation operation,
    @Nullable Double axialDepthM,
    @Nullable Double offsetM) {

  /** Copies the list. */
  public KnownParts {
    packing = List.copyOf(packing);
  }

  static KnownParts of(Values request) {
    Values none = new Values();
    Values stock = or(request.get(RequestFields.STOCK), none);
    Values hold = or(request.get(RequestFields.HOLD), none);
    Values cut = or(request.get(RequestFields.CUT), none);
    Values material = stock.get(StockFields.MATERIAL);
    Values vise = hold.get(HoldFields.VISE);
    Values machine = request.get(RequestFields.MACHINE);
    Values cutter = request.get(RequestFields.CUTTER);
    return new KnownParts(
        stock.get(StockFields.LENGTH_X),
        stock.get(StockFields.THICKNESS),
        stock.get(StockFields.HEIGHT),
        material != null && whole(MaterialFields.SHAPE, material)
            ? MaterialFields.material(material)
            : null,
        vise != null && whole(ViseFields.SHAPE, vise) ? ViseFields.vise(vise) : null,
        hold.get(HoldFields.GRIP_DEPTH),
        packing(hold),
        machine != null && whole(MachineFields.SHAPE, machine)
            ? MachineFields.machine(machine)
            : null,
        cutter != null && whole(CutterFields.SHAPE, cutter) ? CutterFields.cutter(cutter) : null,
        cut.get(CutFields.OPERATION),
        cut.get(CutFields.AXIAL_DEPTH),
        cut.get(CutFields.OFFSET));
  }

  private static List<Packing> packing(Values hold) {
    List<Values> pieces = hold.get(HoldFields.PACKING);
    return pieces == null
        ? List.of()
        : pieces.stream()
            .filter(v -> whole(HoldFields.PACKING_SHAPE, v) && v.has(HoldFields.DEPTH))
            .map(HoldFields::piece)
            .toList();
  }

  private static Values or(@Nullable Values values, Values otherwise) {
    return values == null ? otherwise : values;
  }

  /** Whether everything that has to be given was read, so that a record can be made of it. */
  private static boolean whole(ObjectSchema<?> shape, @Nullable Values values) {
    return values != null
        && shape.fields().stream()
            .allMatch(
                f ->
                    f instanceof ObjectField<?, ?> part
                        ? whole(part, values)
                        : !f.required() || values.has(f));
  }

  private static boolean whole(ObjectField<?, ?> part, Values values) {
    return values.has(part) ? whole(part.shape(), values.get(part)) : !part.required();
  }

  /** How much packing lies between the stock and a jaw, in m. */
  public double packingM(JawSide side) {
    return packing.stream().filter(p -> p.side() == side).mapToDouble(Packing::sizeM).sum();
  }
}
