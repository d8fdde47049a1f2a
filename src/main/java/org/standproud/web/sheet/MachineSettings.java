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
import org.standproud.setup.units.QuantityKind;

/**
 * The numbers of a set-up that somebody has to set at the machine, in the order of setting them.
 */
final class MachineSettings {

  private static final String UNKNOWN = "not known";

  private final Setup setup;
  private final Evidence evidence;
  private final Figures figures;
  private final List<Row> rows = new ArrayList<>();

  /**
   * One number to set.
   *
   * @param name what is set
   * @param value to what
   */
  public record Row(String name, String value) {}

  private MachineSettings(Setup setup, Evidence evidence) {
    this.setup = setup;
    this.evidence = evidence;
    this.figures = new Figures(setup.units());
  }

  static List<Row> of(Setup setup, Evidence evidence) {
    MachineSettings numbers = new MachineSettings(setup, evidence);
    numbers.addHold(setup.hold());
    numbers.addCut(setup.cut());
    return List.copyOf(numbers.rows);
  }

  private void addHold(Hold hold) {
    add("Vise", hold.vise().name());
    add("Grip depth", figures.length(hold.gripDepthM()));
    add("Stick-out", figures.length(setup.stickOutM()));
    Band force = hold.clampingForceN();
    Band torque = hold.handleTorqueNm();
    if (force != null) {
      add("Clamping force", figures.of(QuantityKind.FORCE, force));
    }
    if (torque != null) {
      add("Handle torque", figures.of(QuantityKind.TORQUE, torque));
    }
    if (force == null && torque == null) {
      add("Clamping", UNKNOWN);
    }
    if (hold.packing().isEmpty()) {
      add("Packing", "none");
    }
    hold.packing().forEach(this::addPacking);
    add("Seat", words(hold.seat()));
    add("Stop", words(hold.stop()));
  }

  private void addPacking(Packing piece) {
    add(
        "Packing, " + piece.side().words(),
        "%s %s %s, %s below the jaw top"
            .formatted(
                piece.material().words(),
                piece.kind().words(),
                figures.length(piece.sizeM()),
                figures.length(piece.depthM())));
  }

  private void addCut(Cut cut) {
    add("Cutter", setup.cutter().name());
    add("Milled", cut.operation().words() + ", " + cut.stage().words());
    add("Axial depth a_p", figures.length(cut.axialDepthM()));
    addFact("Radial depth a_e", Vocabulary.RADIAL_DEPTH);
    add("Cutter axis from middle", offset(cut.offsetM()));
    add("Feed of the cutter", cut.feed().words() + ", " + cut.feedDrive().words());
    add("Spindle n", figures.of(QuantityKind.SPINDLE_SPEED, cut.spindleSpeedRevPerS()));
    add("Feed per tooth f_z", figures.of(QuantityKind.LENGTH, cut.feedPerToothM()));
    addFact("Table feed v_f", Vocabulary.TABLE_FEED);
  }

  private String offset(double offsetM) {
    if (offsetM == 0) {
      return "0";
    }
    JawSide side = offsetM > 0 ? JawSide.FIXED : JawSide.MOVABLE;
    return figures.length(Math.abs(offsetM)) + " toward the " + side.words();
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

  private static String words(@Nullable Worded choice) {
    return choice == null ? UNKNOWN : choice.words();
  }
}
