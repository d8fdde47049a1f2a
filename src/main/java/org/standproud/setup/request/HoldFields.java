package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.FORCE;
import static org.standproud.setup.units.QuantityKind.FREQUENCY;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.STIFFNESS;
import static org.standproud.setup.units.QuantityKind.TORQUE;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Clamp;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.HeldMeasurement;
import org.standproud.setup.Hold;
import org.standproud.setup.JawFaces;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Seat;
import org.standproud.setup.Stop;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;

/** The fields of the hold. */
public final class HoldFields {

  public static final Choice<Packing, JawSide> SIDE =
      Choice.of("side", JawSide.class, Packing::side, "the jaw it lies against");
  public static final Choice<Packing, PackingKind> KIND =
      Choice.of("kind", PackingKind.class, Packing::kind, "its shape");
  public static final Choice<Packing, PackingMaterial> MADE_OF =
      Choice.of("material", PackingMaterial.class, Packing::material, "what it is made of");
  public static final Quantity<Packing> SIZE =
      Quantity.of(
          "size",
          LENGTH,
          0.02e-3,
          0.03,
          Packing::sizeM,
          "diameter of a wire, thickness of any other kind");
  public static final Quantity<Packing> DEPTH =
      Quantity.<Packing>of(
              "depth",
              LENGTH,
              0,
              0.3,
              Packing::depthM,
              "depth of its middle below the jaw top; card and sheet lie over the whole gripped"
                  + " face if it is left out")
          .mayBeUnknown();
  static final ObjectSchema<Packing> PACKING_SHAPE =
      new ObjectSchema<>(
          "packing", List.of(SIDE, KIND, MADE_OF, SIZE, DEPTH), HoldFields::checkPacking);

  public static final Choice<Clamp, JawSide> CLAMP_SIDE =
      Choice.of("side", JawSide.class, Clamp::side, "the side of the stock on which it stands");
  public static final Quantity<Clamp> CLAMP_ALONG =
      Quantity.of(
          "along",
          LENGTH,
          -2,
          2,
          Clamp::alongM,
          "place of its middle along X from the middle of the stock");
  public static final Quantity<Clamp> CLAMP_LENGTH =
      Quantity.of("length", LENGTH, 1e-3, 1, Clamp::lengthM, "how long it is along the jaws");
  public static final Quantity<Clamp> CLAMP_GAP =
      Quantity.<Clamp>of(
              "gap",
              LENGTH,
              0,
              1,
              Clamp::gapM,
              "distance from the side of the stock to its nearest face; taken to touch if left out")
          .mayBeUnknown();
  public static final Quantity<Clamp> CLAMP_HEIGHT =
      Quantity.of("height", LENGTH, 0, 0.5, Clamp::heightM, "height of its top above the jaw top");
  static final ObjectSchema<Clamp> CLAMP_SHAPE =
      new ObjectSchema<>(
          "clamp", List.of(CLAMP_SIDE, CLAMP_ALONG, CLAMP_LENGTH, CLAMP_GAP, CLAMP_HEIGHT));

  public static final Choice<Backing, BackingKind> BACKING_KIND =
      Choice.of("kind", BackingKind.class, Backing::kind, "what it is");
  public static final Choice<Backing, JawSide> BACKING_SIDE =
      Choice.of(
          "side",
          JawSide.class,
          Backing::side,
          "the side of the plate on which it stands, where it takes a push toward that jaw");
  public static final Quantity<Backing> BACKING_ALONG =
      Quantity.of(
          "along",
          LENGTH,
          -2,
          2,
          Backing::alongM,
          "place of its middle along X from the middle of the stock");
  public static final Quantity<Backing> BACKING_LENGTH =
      Quantity.of("length", LENGTH, 1e-3, 1, Backing::lengthM, "how long it is along the jaws");
  public static final Quantity<Backing> BACKING_HEIGHT =
      Quantity.of(
          "height",
          LENGTH,
          1e-3,
          0.5,
          Backing::heightM,
          "height above the jaw top at which it touches, which is its top");
  public static final BandField<Backing> BACKING_STIFFNESS =
      BandField.<Backing>of(
              "stiffness",
              STIFFNESS,
              1e5,
              1e10,
              Backing::stiffnessNPerM,
              "its stiffness across the jaws where it touches")
          .mayBeUnknown();
  public static final BandField<Backing> BACKING_HOLDS =
      BandField.<Backing>of(
              "holds",
              FORCE,
              1,
              100_000,
              Backing::holdsN,
              "push that it withstands before it slides or tips")
          .mayBeUnknown();
  public static final BandField<Backing> BACKING_PRELOAD =
      BandField.<Backing>of(
              "preload",
              FORCE,
              0,
              100_000,
              Backing::preloadN,
              "push with which it was set against the plate; it just touches if left out")
          .mayBeUnknown();
  static final ObjectSchema<Backing> BACKING_SHAPE =
      new ObjectSchema<>(
          "backing",
          List.of(
              BACKING_KIND,
              BACKING_SIDE,
              BACKING_ALONG,
              BACKING_LENGTH,
              BACKING_HEIGHT,
              BACKING_STIFFNESS,
              BACKING_HOLDS,
              BACKING_PRELOAD));

  public static final ObjectField<Hold, Vise> VISE =
      ObjectField.onShelf(
          "vise",
          ViseFields.SHAPE,
          Catalogue::vises,
          () -> SpokenShop.VISES,
          Hold::vise,
          "the vise");
  public static final Quantity<Hold> GRIP_DEPTH =
      Quantity.of(
          "gripDepth", LENGTH, 0.5e-3, 0.3, Hold::gripDepthM, "height of stock inside the jaws");
  public static final BandField<Hold> CLAMPING_FORCE =
      BandField.<Hold>of(
              "clampingForce", FORCE, 50, 500_000, Hold::clampingForceN, "clamping force")
          .mayBeUnknown();
  public static final BandField<Hold> HANDLE_TORQUE =
      BandField.<Hold>of(
              "handleTorque", TORQUE, 0.5, 1000, Hold::handleTorqueNm, "torque on the screw")
          .mayBeUnknown();
  public static final Choice<Hold, HandleEffort> CLAMPING =
      Choice.<Hold, HandleEffort>of(
              "clamping",
              HandleEffort.class,
              Hold::effort,
              "how hard the handle was pulled, in words; a handleTorque beside it stands in their"
                  + " place")
          .mayBeUnknown();
  public static final Quantity<Hold> HANDLE_LENGTH =
      Quantity.<Hold>of(
              "handleLength",
              LENGTH,
              0.04,
              1.5,
              hold -> null,
              "length of the handle at which clamping was pulled, from the screw to the hand")
          .mayBeUnknown();
  public static final Choice<Hold, JawFaces> FACES =
      Choice.<Hold, JawFaces>of(
              "faces", JawFaces.class, Hold::faces, "what is on the gripped faces")
          .called("what is on the gripped faces")
          .mayBeUnknown();
  public static final BandField<Hold> JAW_FRICTION =
      BandField.<Hold>of(
              "jawFriction",
              NUMBER,
              0.02,
              0.5,
              Hold::jawFriction,
              "coefficient of friction between stock and jaw")
          .mayBeUnknown();
  public static final ListField<Hold, Packing> PACKING =
      new ListField<>("packing", PACKING_SHAPE, 4, false, Hold::packing, "packing, perhaps none");
  public static final Choice<Hold, Seat> SEAT =
      Choice.<Hold, Seat>of("seat", Seat.class, Hold::seat, "what the underside sits on")
          .mayBeUnknown();
  public static final Choice<Hold, Stop> STOP =
      Choice.<Hold, Stop>of("stop", Stop.class, Hold::stop, "where a stop stands").mayBeUnknown();
  public static final Quantity<Hold> STOP_HEIGHT =
      Quantity.<Hold>of(
              "stopHeight",
              LENGTH,
              0,
              0.5,
              Hold::stopHeightM,
              "height of the top of the stop above the jaw top; 0 for one that ends below it")
          .mayBeUnknown();
  public static final ListField<Hold, Clamp> CLAMPS =
      new ListField<>(
          "clamps",
          CLAMP_SHAPE,
          8,
          false,
          Hold::clamps,
          "clamps and straps that stand beside the stock; if left out, nothing is known of any");
  public static final ListField<Hold, Backing> BACKING =
      new ListField<>(
          "backing",
          BACKING_SHAPE,
          4,
          false,
          Hold::backing,
          "jacks, blocks or angle plates that touch the plate above the jaws; none if left out");
  public static final Quantity<Hold> VISE_RUN_OUT =
      Quantity.<Hold>of(
              "viseRunOut",
              LENGTH,
              0,
              0.01,
              Hold::viseRunOutM,
              "deviation of the fixed jaw from the table travel over its width")
          .called("vise run-out")
          .mayBeUnknown();

  public static final Quantity<Hold> ALONG =
      Quantity.<Hold>of(
              "along",
              LENGTH,
              -1,
              1,
              Hold::alongM,
              "place of the middle of the stock along X from the middle of the jaws; taken as 0 if"
                  + " left out")
          .called("place of the stock along the jaws")
          .mayBeUnknown();

  public static final BandField<Hold> MEASURED_NOTE =
      BandField.<Hold>of(
              "measuredNote",
              FREQUENCY,
              1,
              50_000,
              hold -> hold.measured().noteHz(),
              "lowest note of the stock in this hold, tapped at an end of its top edge")
          .mayBeUnknown();
  public static final BandField<Hold> MEASURED_DAMPING =
      BandField.<Hold>of(
              "measuredDamping",
              NUMBER,
              0.0005,
              0.3,
              hold -> hold.measured().dampingRatio(),
              "damping over critical, from the decay of the measured note")
          .mayBeUnknown();
  public static final BandField<Hold> MEASURED_STIFFNESS =
      BandField.<Hold>of(
              "measuredStiffness",
              STIFFNESS,
              1e3,
              1e10,
              hold -> hold.measured().stiffnessNPerM(),
              "push across the stock at an end of its top edge over how far it gives there")
          .mayBeUnknown();

  static final ObjectSchema<Hold> SHAPE =
      new ObjectSchema<>(
          "hold",
          List.of(
              VISE,
              GRIP_DEPTH,
              CLAMPING_FORCE,
              HANDLE_TORQUE,
              CLAMPING,
              HANDLE_LENGTH,
              FACES,
              JAW_FRICTION,
              PACKING,
              SEAT,
              STOP,
              STOP_HEIGHT,
              CLAMPS,
              BACKING,
              VISE_RUN_OUT,
              ALONG,
              MEASURED_NOTE,
              MEASURED_DAMPING,
              MEASURED_STIFFNESS),
          HoldFields::check);

  private HoldFields() {}

  private static void checkPacking(Values v, FieldLocation place) {
    PackingKind kind = v.get(KIND);
    PackingMaterial material = v.get(MADE_OF);
    if (material == PackingMaterial.PAPER && kind != null && kind != PackingKind.CARD) {
      place.child(MADE_OF.name()).fault(null, "paper packing is of the kind card");
    }
    if (kind == PackingKind.CARD && material != null && material != PackingMaterial.PAPER) {
      place.child(MADE_OF.name()).fault(null, "card is of paper; call soft metal a sheet");
    }
    boolean local = kind == PackingKind.WIRE || kind == PackingKind.STRIP;
    if (local && !v.has(DEPTH)) {
      place.child(DEPTH.name()).fault(null, "a wire or strip needs its depth below the jaw top");
    }
  }

  private static void check(Values v, FieldLocation place) {
    Double grip = v.get(GRIP_DEPTH);
    Values vise = v.get(VISE);
    Double jaw = vise == null ? null : vise.get(ViseFields.JAW_HEIGHT);
    if (grip != null && jaw != null && grip > jaw) {
      OrderCheck.exceeds(
          grip, GRIP_DEPTH, jaw, "the height of the jaw", place.child(GRIP_DEPTH.name()));
    }
    if (v.has(CLAMPING_FORCE) && v.has(HANDLE_TORQUE)) {
      place
          .child(HANDLE_TORQUE.name())
          .fault(null, "enter a clamping force or a handle torque, not both");
    }
    settleClamping(v, place);
    if (v.get(STOP) == Stop.NONE && v.has(STOP_HEIGHT)) {
      place.child(STOP_HEIGHT.name()).fault(null, "there is no stop that could have a height");
    }
    List<Values> packing = v.get(PACKING);
    checkSides(packing, place);
    if (grip != null && packing != null) {
      for (int i = 0; i < packing.size(); i++) {
        placePacking(packing.get(i), grip, place.child(PACKING.name()).item(i));
      }
    }
  }

  /** A pull in words is a torque on the screw; one that was measured stands. */
  private static void settleClamping(Values v, FieldLocation place) {
    HandleEffort effort = v.get(CLAMPING);
    if (effort == null) {
      if (v.has(HANDLE_LENGTH)) {
        place
            .child(HANDLE_LENGTH.name())
            .fault(null, "the handle length is used only with clamping");
      }
    } else if (v.has(CLAMPING_FORCE)) {
      place.child(CLAMPING.name()).fault(null, "give either clampingForce or clamping, not both");
    } else if (!v.has(HANDLE_TORQUE)) {
      v.put(HANDLE_TORQUE, SpokenShop.torqueNm(effort, v.get(HANDLE_LENGTH)));
    }
  }

  private static void checkSides(@Nullable List<Values> packing, FieldLocation place) {
    Set<JawSide> taken = EnumSet.noneOf(JawSide.class);
    for (int i = 0; packing != null && i < packing.size(); i++) {
      JawSide side = packing.get(i).get(SIDE);
      if (side != null && !taken.add(side)) {
        place
            .child(PACKING.name())
            .item(i)
            .child(SIDE.name())
            .fault(null, "there is packing on the " + side.words() + " already; name one piece");
      }
    }
  }

  private static void placePacking(Values piece, double grip, FieldLocation place) {
    Double depth = piece.get(DEPTH);
    if (depth == null) {
      piece.put(DEPTH, grip / 2);
    } else if (depth > grip) {
      OrderCheck.exceeds(depth, DEPTH, grip, "the grip depth", place.child(DEPTH.name()));
    } else {
      checkWire(piece, depth, grip, place);
    }
  }

  private static void checkWire(Values piece, double depth, double grip, FieldLocation place) {
    Double size = piece.get(SIZE);
    boolean out = size != null && (depth < size / 2 || depth > grip - size / 2);
    if (out && piece.get(KIND) == PackingKind.WIRE) {
      place
          .child(DEPTH.name())
          .fault(
              null, "the wire must lie wholly inside the grip: half its diameter from each edge");
    }
  }

  static Hold hold(Values v) {
    List<Values> packing = v.get(PACKING);
    List<Values> clamps = v.get(CLAMPS);
    List<Values> backing = v.get(BACKING);
    return Hold.in(ViseFields.vise(v.need(VISE)), v.need(GRIP_DEPTH))
        .clamping(v.get(CLAMPING_FORCE), v.get(HANDLE_TORQUE), v.get(JAW_FRICTION))
        .packing(packing == null ? List.of() : packing.stream().map(HoldFields::piece).toList())
        .seat(v.get(SEAT))
        .stop(v.get(STOP))
        .stopHeight(v.get(STOP_HEIGHT))
        .clamps(clamps == null ? List.of() : clamps.stream().map(HoldFields::clamp).toList())
        .backing(backing == null ? List.of() : backing.stream().map(HoldFields::backing).toList())
        .viseRunOut(v.get(VISE_RUN_OUT))
        .effort(v.get(CLAMPING))
        .faces(v.get(FACES))
        .along(v.get(ALONG))
        .measured(
            new HeldMeasurement(
                v.get(MEASURED_NOTE), v.get(MEASURED_DAMPING), v.get(MEASURED_STIFFNESS)))
        .held();
  }

  private static Backing backing(Values v) {
    return new Backing(
        v.need(BACKING_KIND),
        v.need(BACKING_SIDE),
        v.need(BACKING_ALONG),
        v.need(BACKING_LENGTH),
        v.need(BACKING_HEIGHT),
        v.get(BACKING_STIFFNESS),
        v.get(BACKING_HOLDS),
        v.get(BACKING_PRELOAD));
  }

  private static Clamp clamp(Values v) {
    return new Clamp(
        v.need(CLAMP_SIDE),
        v.need(CLAMP_ALONG),
        v.need(CLAMP_LENGTH),
        v.get(CLAMP_GAP),
        v.need(CLAMP_HEIGHT));
  }

  static Packing piece(Values v) {
    return new Packing(v.need(SIDE), v.need(KIND), v.need(MADE_OF), v.need(SIZE), v.need(DEPTH));
  }
}
