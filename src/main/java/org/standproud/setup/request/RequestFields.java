package org.standproud.setup.request;

import java.util.List;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.Hold;
import org.standproud.setup.JobReference;
import org.standproud.setup.Machine;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;

/** The fields of a whole request. */
public final class RequestFields {

  public static final Text<JobReference> JOB_ORDER =
      new Text<>("jobOrder", 80, true, JobReference::jobOrder, "the job order");
  public static final Text<JobReference> WORK_MASTER =
      new Text<>("workMaster", 80, false, JobReference::workMaster, "the work master");
  public static final Text<JobReference> JOB_OPERATION =
      new Text<>(
          "operation",
          80,
          false,
          JobReference::operation,
          "operation of the work master",
          "job operation");
  static final ObjectSchema<JobReference> JOB_SHAPE =
      new ObjectSchema<>("job", List.of(JOB_ORDER, WORK_MASTER, JOB_OPERATION));

  public static final Choice<Setup, UnitSystem> UNITS =
      Choice.of(
          "units", UnitSystem.class, Setup::units, "units of plain numbers and of the answer");
  public static final Text<Setup> NOTE =
      new Text<>("note", 400, false, setup -> null, "a remark, kept by no one and read by no rule");
  public static final ObjectField<Setup, JobReference> JOB =
      ObjectField.of("job", JOB_SHAPE, Setup::job, "what it is for, in ISA-95 words");
  public static final ObjectField<Setup, Stock> STOCK =
      ObjectField.of(
          "stock", StockFields.SHAPE, Setup::stock, "the piece as it stands in the hold");
  public static final ObjectField<Setup, Hold> HOLD =
      ObjectField.of("hold", HoldFields.SHAPE, Setup::hold, "how it is held");
  public static final ObjectField<Setup, Machine> MACHINE =
      ObjectField.onShelf(
          "machine",
          MachineFields.SHAPE,
          Catalogue::machines,
          () -> SpokenShop.MACHINES,
          Setup::machine,
          "the machine");
  public static final ObjectField<Setup, Cutter> CUTTER =
      ObjectField.<Setup, Cutter>onShelf(
              "cutter",
              CutterFields.SHAPE,
              Catalogue::cutters,
              () -> SpokenShop.CUTTERS,
              Setup::cutter,
              "the cutter")
          .showing(
              List.of(
                  CutterFields.DIAMETER,
                  CutterFields.TEETH,
                  CutterFields.EDGE,
                  CutterFields.RUN_OUT));
  public static final ObjectField<Setup, Cut> CUT =
      ObjectField.of("cut", CutFields.SHAPE, Setup::cut, "the pass that is asked about");
  public static final ListField<Setup, PlannedCut> PASSES =
      new ListField<>(
          "passes",
          CutFields.PLANNED_SHAPE,
          PlannedCut.MOST,
          false,
          Setup::passes,
          "the passes planned on this set-up in order, of which the cut is one; where the face is"
              + " stepped down, those of one level; if left out, nothing is known of others",
          "planned passes");

  static final ObjectSchema<Setup> SHAPE =
      new ObjectSchema<>(
          "set-up",
          List.of(UNITS, NOTE, JOB, STOCK, HOLD, MACHINE, CUTTER, CUT, PASSES),
          RequestFields::check);

  private RequestFields() {}

  private static void check(Values v, FieldLocation place) {
    Values stock = v.get(STOCK);
    Values hold = v.get(HOLD);
    if (stock != null && hold != null) {
      checkGrip(stock, hold, place.child(HOLD.name()).child(HoldFields.GRIP_DEPTH.name()));
      checkOpening(stock, hold, place.child(STOCK.name()).child(StockFields.THICKNESS.name()));
    }
    Values cut = v.get(CUT);
    if (stock != null && hold != null && cut != null) {
      checkDepth(stock, hold, cut, place.child(CUT.name()).child(CutFields.AXIAL_DEPTH.name()));
    }
  }

  private static void checkGrip(Values stock, Values hold, FieldLocation place) {
    Double height = stock.get(StockFields.HEIGHT);
    Double grip = hold.get(HoldFields.GRIP_DEPTH);
    if (height != null && grip != null && grip >= height) {
      OrderCheck.exceeds(grip, HoldFields.GRIP_DEPTH, height, "the height of the stock", place);
    }
  }

  private static void checkOpening(Values stock, Values hold, FieldLocation place) {
    Double thickness = stock.get(StockFields.THICKNESS);
    Values vise = hold.get(HoldFields.VISE);
    Double opening = vise == null ? null : vise.get(ViseFields.OPENING);
    List<Values> packing = hold.get(HoldFields.PACKING);
    if (thickness == null || opening == null) {
      return;
    }
    double sum = thickness;
    for (Values piece : packing == null ? List.<Values>of() : packing) {
      Double size = piece.get(HoldFields.SIZE);
      sum += size == null ? 0 : size;
    }
    if (sum > opening) {
      OrderCheck.exceeds(
          sum, StockFields.THICKNESS, opening, "the opening of the vise, packing included", place);
    }
  }

  /** A cut as deep as the stick-out would mill the jaws. */
  private static void checkDepth(Values stock, Values hold, Values cut, FieldLocation place) {
    Double height = stock.get(StockFields.HEIGHT);
    Double grip = hold.get(HoldFields.GRIP_DEPTH);
    Double depth = cut.get(CutFields.AXIAL_DEPTH);
    if (height != null && grip != null && depth != null && grip < height && depth > height - grip) {
      OrderCheck.exceeds(
          depth, CutFields.AXIAL_DEPTH, height - grip, "the height above the jaws", place);
    }
  }

  static JobReference reference(Values job) {
    return new JobReference(job.need(JOB_ORDER), job.get(WORK_MASTER), job.get(JOB_OPERATION));
  }

  static Setup setup(Values v) {
    Values job = v.need(JOB);
    List<Values> passes = v.get(PASSES);
    return new Setup(
        reference(job),
        StockFields.stock(v.need(STOCK)),
        HoldFields.hold(v.need(HOLD)),
        MachineFields.machine(v.need(MACHINE)),
        CutterFields.cutter(v.need(CUTTER)),
        CutFields.cut(v.need(CUT)),
        passes == null ? List.of() : passes.stream().map(CutFields::planned).toList(),
        v.need(UNITS));
  }
}
