package org.standproud.web.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.drawing.Figures;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;
import org.standproud.setup.Worded;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.units.QuantityKind;
import org.standproud.web.words.PageWords;

/** The numbers to set at the machine, in the order of setting them. */
final class MachineSettings {

  private final Setup setup;
  private final Evidence evidence;
  private final PageWords words;
  private final boolean planned;
  private final Figures figures;
  private final List<Row> rows = new ArrayList<>();

  /**
   * One number to set.
   *
   * @param name the setting
   * @param value its value
   */
  public record Row(String name, String value) {}

  private MachineSettings(Setup setup, Evidence evidence, PageWords words, boolean planned) {
    this.setup = setup;
    this.evidence = evidence;
    this.words = words;
    this.planned = planned;
    this.figures = new Figures(setup.units());
  }

  /**
   * The numbers.
   *
   * @param setup the set-up
   * @param evidence its evidence
   * @param words the words of the sheet
   * @param planned whether the sheet has a plan of passes, which then holds depth, speed and
   *     position of the cutter: a sheet has one set of numbers
   */
  static List<Row> of(Setup setup, Evidence evidence, PageWords words, boolean planned) {
    MachineSettings numbers = new MachineSettings(setup, evidence, words, planned);
    numbers.addHold(setup.hold());
    numbers.addCut(setup.cut());
    return List.copyOf(numbers.rows);
  }

  private void addHold(Hold hold) {
    add(words.of("sheet.vise"), hold.vise().name());
    add(words.of("sheet.grip"), figures.length(hold.gripDepthM()));
    add(words.of("sheet.out"), figures.length(setup.stickOutM()));
    Band force = hold.clampingForceN();
    Band torque = hold.handleTorqueNm();
    if (force != null) {
      add(words.of("sheet.force"), figures.of(QuantityKind.FORCE, force));
    }
    if (torque != null) {
      add(words.of("sheet.torque"), figures.of(QuantityKind.TORQUE, torque));
    }
    if (force == null && torque == null) {
      add(words.of("sheet.clamping"), words.of("sheet.unknown"));
    }
    if (hold.packing().isEmpty()) {
      add(words.of("sheet.packing"), words.of("sheet.packing.none"));
    }
    hold.packing().forEach(this::addPacking);
    add(words.of("sheet.seat"), choice(HoldFields.SEAT, hold.seat()));
    add(words.of("sheet.stop"), choice(HoldFields.STOP, hold.stop()));
  }

  private void addPacking(Packing piece) {
    add(
        words.of("sheet.packing") + ", " + piece.side().words(),
        words.of(
            "sheet.packing.value",
            piece.material().words(),
            piece.kind().words(),
            figures.length(piece.sizeM()),
            figures.length(piece.depthM())));
  }

  private void addCut(Cut cut) {
    add(words.of("sheet.cutter"), setup.cutter().name());
    add(
        words.of("sheet.milled"),
        cut.operation().words() + ", " + choice(CutFields.STAGE, cut.stage()));
    if (planned) {
      add(words.of("sheet.depth"), words.of("sheet.see.plan"));
      return;
    }
    add(words.of("sheet.depth"), figures.length(cut.axialDepthM()));
    addFact(words.of("sheet.width"), Vocabulary.RADIAL_DEPTH);
    add(words.of("sheet.offset"), offset(cut.offsetM()));
    add(
        words.of("sheet.feed"),
        choice(CutFields.FEED, cut.feed()) + ", " + cut.feedDrive().words());
    add(words.of("sheet.speed"), figures.of(QuantityKind.SPINDLE_SPEED, cut.spindleSpeedRevPerS()));
    add(words.of("sheet.tooth"), figures.of(QuantityKind.LENGTH, cut.feedPerToothM()));
    addFact(words.of("sheet.table"), Vocabulary.TABLE_FEED);
  }

  private String offset(double offsetM) {
    if (offsetM == 0) {
      return "0";
    }
    JawSide side = offsetM > 0 ? JawSide.FIXED : JawSide.MOVABLE;
    return words.of("sheet.offset.value", figures.length(Math.abs(offsetM)), side.words());
  }

  private void addFact(String name, Fact fact) {
    if (evidence.get(fact) instanceof Value.Quantity quantity
        && fact.type() instanceof Fact.Number type) {
      add(name, figures.of(type.kind(), quantity.band()));
    }
  }

  private void add(String name, String value) {
    rows.add(new Row(name, value));
  }

  private String choice(Field<?, ?> field, @Nullable Worded choice) {
    return choice == null
        ? words.of("sheet.unknown")
        : words.choice(FieldPointer.to(field).text(), choice.words());
  }
}
