package org.standproud.advice.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.Judged;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Hold;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.units.QuantityKind;

/** Writes changes as instructions for a machinist, with the old and the new value. */
final class ChangeWording {

  /** A machinist's order: the stock, the hold, the cutter, the cut. */
  private static final List<ChangeKind> IN_ORDER =
      List.of(
          ChangeKind.FACES,
          ChangeKind.DEBURR,
          ChangeKind.JAWS,
          ChangeKind.GRIP,
          ChangeKind.SEAT,
          ChangeKind.PACKING,
          ChangeKind.CLAMP,
          ChangeKind.STOP,
          ChangeKind.BACKING,
          ChangeKind.CUTTER,
          ChangeKind.SPEED,
          ChangeKind.FEED,
          ChangeKind.DRIVE,
          ChangeKind.OFFSET,
          ChangeKind.DIRECTION,
          ChangeKind.MODE,
          ChangeKind.SLIDES,
          ChangeKind.DEPTH,
          ChangeKind.SIDE_DEPTH);

  private final Setup before;
  private final Setup after;
  private final Judged judged;
  private final Wording wording;

  private ChangeWording(Setup before, ProvenChange after) {
    this.before = before;
    this.after = after.setup();
    this.judged = after.judged();
    this.wording = new Wording(before.units());
  }

  /** The instruction, without the full stop: "Grip 39 mm deep, not 8 mm, and take four passes". */
  static String of(Setup before, ProvenChange after) {
    ChangeWording spoken = new ChangeWording(before, after);
    List<String> phrases =
        IN_ORDER.stream()
            .filter(kind -> after.steps().stream().anyMatch(step -> step.kind() == kind))
            .map(spoken::phrase)
            .toList();
    List<String> first = phrases.subList(0, phrases.size() - 1);
    String last = phrases.get(phrases.size() - 1);
    String all = first.isEmpty() ? last : String.join("; ", first) + "; and " + last;
    return Character.toUpperCase(all.charAt(0)) + all.substring(1);
  }

  private String phrase(ChangeKind kind) {
    Cut was = before.cut();
    Cut is = after.cut();
    return switch (kind) {
      case FACES -> "mill or file both gripped faces flat before it goes in";
      case DEBURR -> "file the burrs off the gripped edges";
      case GRIP ->
          "grip it "
              + length(after.hold().gripDepthM())
              + " deep, not "
              + length(before.hold().gripDepthM());
      case JAWS -> jaws();
      case SEAT -> "seat it on parallels";
      case PACKING -> packing();
      case CLAMP -> clamp(before.hold(), after.hold());
      case STOP -> "set a stop " + stop(after.hold().stop());
      case BACKING -> backing(after.hold().backing().get(0));
      case CUTTER ->
          "take the "
              + after.cutter().name()
              + " at "
              + speed(is)
              + " in the place of the "
              + before.cutter().name();
      case SPEED -> "run at " + speed(is) + ", not " + speed(was);
      case FEED -> "feed " + feed(is) + " a tooth, not " + feed(was);
      case DRIVE -> "use the power feed, not the wheel";
      case OFFSET -> "run the cutter " + place(is.offsetM()) + ", not " + place(was.offsetM());
      case DIRECTION -> "feed toward " + is.feed().words() + ", not " + was.feed().words();
      case MODE -> "cut " + mode() + "feeding toward " + is.feed().words();
      case SLIDES -> slides(is);
      case DEPTH ->
          passes() + length(is.axialDepthM()) + ", not one of " + length(was.axialDepthM());
      case SIDE_DEPTH ->
          passes()
              + length(after.sideDepthM())
              + " off the side, not "
              + length(before.sideDepthM())
              + " at once";
    };
  }

  private String length(double lengthM) {
    return wording.words(QuantityKind.LENGTH, lengthM);
  }

  private String passes() {
    return "take it in " + Passes.of(before, after) + " passes of ";
  }

  private String speed(Cut cut) {
    return wording.words(QuantityKind.SPINDLE_SPEED, cut.spindleSpeedRevPerS());
  }

  private String feed(Cut cut) {
    return wording.words(QuantityKind.LENGTH, cut.feedPerToothM());
  }

  private String place(double offsetM) {
    return offsetM == 0
        ? "over the middle"
        : length(Math.abs(offsetM))
            + " off the middle toward the "
            + (offsetM > 0 ? "fixed jaw" : "movable jaw");
  }

  private String mode() {
    return judged.evidence().get(Vocabulary.MODE) instanceof Value.Text text
        ? text.word() + ", "
        : "";
  }

  private String jaws() {
    double highM = after.hold().vise().jawHeightM();
    return highM > before.hold().vise().jawHeightM()
        ? "fit jaws "
            + length(highM)
            + " high and grip it "
            + length(after.hold().gripDepthM())
            + " deep, not "
            + length(before.hold().gripDepthM())
        : "fit soft jaws and mill them true in place";
  }

  private String backing(Backing behind) {
    return "stand "
        + (behind.kind() == BackingKind.ANGLE_PLATE ? "an angle plate " : "a block ")
        + length(behind.lengthM())
        + " long behind it on the side of the "
        + behind.side().words()
        + ", touching it "
        + length(behind.heightM())
        + " above the jaws";
  }

  private static String stop(@Nullable Stop stop) {
    return stop == null || stop == Stop.BOTH ? "at both ends" : "at the " + stop.words() + " end";
  }

  private static String slides(Cut cut) {
    return Boolean.TRUE.equals(cut.slideLocked())
        ? "snug the X slide and lock the others"
        : "lock the slides that do not feed";
  }

  private String clamp(Hold was, Hold is) {
    Band torque = is.handleTorqueNm();
    Band wasTorque = was.handleTorqueNm();
    Band force = is.clampingForceN();
    Band wasForce = was.clampingForceN();
    if (force != null && wasForce != null) {
      return "clamp with "
          + wording.words(QuantityKind.FORCE, force)
          + ", not "
          + wording.words(QuantityKind.FORCE, wasForce);
    }
    return torque != null && wasTorque != null
        ? "tighten to "
            + wording.words(QuantityKind.TORQUE, torque)
            + " on the handle, not "
            + wording.words(QuantityKind.TORQUE, wasTorque)
        : "clamp harder";
  }

  private String packing() {
    List<Packing> was = before.hold().packing();
    List<Packing> is = after.hold().packing();
    List<String> packed = new ArrayList<>();
    Stream.of(is)
        .flatMap(List::stream)
        .filter(p -> !was.contains(p))
        .forEach(p -> packed.add(lay(p)));
    return packed.isEmpty() ? "take the packing off the fixed jaw" : String.join(" and ", packed);
  }

  private String lay(Packing piece) {
    boolean moved =
        before.hold().packing().stream()
            .anyMatch(p -> p.side() == piece.side() && p.kind() == piece.kind());
    String what =
        switch (piece.kind()) {
          case WIRE, STRIP ->
              piece.material().words()
                  + " "
                  + piece.kind().words()
                  + " of "
                  + length(piece.sizeM())
                  + " along the "
                  + piece.side().words()
                  + ", "
                  + length(piece.depthM())
                  + " below the jaw top";
          case CARD, SHEET ->
              length(piece.sizeM())
                  + " of "
                  + piece.material().words()
                  + " "
                  + piece.kind().words()
                  + " behind it on the "
                  + piece.side().words();
        };
    return (moved ? "move the packing: " : "lay ") + what;
  }
}
