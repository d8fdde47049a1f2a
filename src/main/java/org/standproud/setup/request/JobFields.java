package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.ROUGHNESS;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.Blank;
import org.standproud.setup.BlankBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.FinishedPart;
import org.standproud.setup.FinishedPartBuilder;
import org.standproud.setup.HandleEffort;
import org.standproud.setup.JobReference;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
import org.standproud.setup.MillingJob;
import org.standproud.setup.MillingJobBuilder;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.Shelf;
import org.standproud.setup.SparePacking;
import org.standproud.setup.StockCondition;
import org.standproud.setup.StockSurface;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;

/** The fields of a whole job. */
public final class JobFields {

  /** A tolerance above this is none; common practice, no source. */
  private static final double MOST_TOLERANCE_M = 5e-3;

  private static final int MOST_VISES = 8;
  private static final int MOST_CUTTERS = 30;
  private static final int MOST_PACKING = 8;
  private static final int MOST_PARALLELS = 30;

  public static final Quantity<Blank> LENGTH_X =
      size(StockFields.LENGTH_X, Blank::lengthM, "length of the blank");
  public static final Quantity<Blank> THICKNESS =
      size(StockFields.THICKNESS, Blank::thicknessM, "thickness between its broad sides");
  public static final Quantity<Blank> HEIGHT =
      size(StockFields.HEIGHT, Blank::heightM, "height between its long edges");
  public static final ObjectField<Blank, Material> MATERIAL =
      ObjectField.onShelf(
          "material",
          MaterialFields.SHAPE,
          Catalogue::materials,
          () -> SpokenShop.MATERIALS,
          Blank::material,
          "what it is made of");
  public static final Choice<Blank, StockSurface> SURFACE =
      surface("surface", Blank::surface, "condition of the broad sides");
  public static final Choice<Blank, StockSurface> EDGES =
      surface("edges", Blank::edges, "condition of edges and ends; that of the sides if left out");
  public static final Quantity<Blank> HIGH_SPOT =
      Quantity.<Blank>of(
              "highSpot",
              LENGTH,
              StockFields.HIGH_SPOT.range().least(),
              StockFields.HIGH_SPOT.range().greatest(),
              Blank::highSpotM,
              "greatest height of a high spot on a broad side")
          .mayBeUnknown();
  public static final Choice<Blank, StockCondition> CONDITION =
      Choice.<Blank, StockCondition>of(
              StockFields.CONDITION.name(),
              StockCondition.class,
              Blank::condition,
              StockFields.CONDITION.meaning())
          .mayBeUnknown();
  static final ObjectSchema<Blank> BLANK_SHAPE =
      new ObjectSchema<>(
          "blank",
          List.of(LENGTH_X, THICKNESS, HEIGHT, MATERIAL, SURFACE, EDGES, HIGH_SPOT, CONDITION));

  public static final Quantity<FinishedPart> FINISHED_LENGTH =
      size(StockFields.LENGTH_X, FinishedPart::lengthM, "finished length");
  public static final Quantity<FinishedPart> FINISHED_THICKNESS =
      size(StockFields.THICKNESS, FinishedPart::thicknessM, "finished thickness");
  public static final Quantity<FinishedPart> FINISHED_HEIGHT =
      size(StockFields.HEIGHT, FinishedPart::heightM, "finished height");
  public static final Quantity<FinishedPart> LENGTH_TOLERANCE =
      tolerance("lengthTolerance", FinishedPart::lengthToleranceM, "plus and minus of the length");
  public static final Quantity<FinishedPart> THICKNESS_TOLERANCE =
      tolerance(
          "thicknessTolerance",
          FinishedPart::thicknessToleranceM,
          "plus and minus of the thickness");
  public static final Quantity<FinishedPart> HEIGHT_TOLERANCE =
      tolerance("heightTolerance", FinishedPart::heightToleranceM, "plus and minus of the height");
  public static final Quantity<FinishedPart> FLATNESS =
      tolerance("flatness", FinishedPart::flatnessM, "flatness of the broad sides");
  public static final Quantity<FinishedPart> FINISHED_ROUGHNESS =
      Quantity.<FinishedPart>of(
              "roughness",
              ROUGHNESS,
              0.05e-6,
              100e-6,
              FinishedPart::roughnessM,
              "greatest Ra of the milled faces")
          .mayBeUnknown();
  static final ObjectSchema<FinishedPart> FINISHED_SHAPE =
      new ObjectSchema<>(
          "finished part",
          List.of(
              FINISHED_LENGTH,
              FINISHED_THICKNESS,
              FINISHED_HEIGHT,
              LENGTH_TOLERANCE,
              THICKNESS_TOLERANCE,
              HEIGHT_TOLERANCE,
              FLATNESS,
              FINISHED_ROUGHNESS));

  public static final Choice<SparePacking, PackingKind> PACKING_KIND =
      Choice.of("kind", PackingKind.class, SparePacking::kind, "its shape");
  public static final Choice<SparePacking, PackingMaterial> PACKING_MATERIAL =
      Choice.of("material", PackingMaterial.class, SparePacking::material, "what it is made of");
  public static final Quantity<SparePacking> PACKING_SIZE =
      Quantity.of(
          "size",
          LENGTH,
          HoldFields.SIZE.range().least(),
          HoldFields.SIZE.range().greatest(),
          SparePacking::sizeM,
          "diameter of a wire, thickness of any other kind");
  static final ObjectSchema<SparePacking> PACKING_SHAPE =
      new ObjectSchema<>("packing", List.of(PACKING_KIND, PACKING_MATERIAL, PACKING_SIZE));

  public static final ItemList<Shelf, Vise> VISES =
      new ItemList<>(
          "vises",
          ObjectField.onShelf(
              "vise",
              ViseFields.SHAPE,
              Catalogue::vises,
              () -> SpokenShop.VISES,
              Function.identity(),
              "a vise"),
          MOST_VISES,
          Shelf::vises,
          "the vises; those of the catalogue if left out");
  public static final ItemList<Shelf, Cutter> CUTTERS =
      new ItemList<>(
          "cutters",
          ObjectField.onShelf(
              "cutter",
              CutterFields.SHAPE,
              Catalogue::cutters,
              () -> SpokenShop.CUTTERS,
              Function.identity(),
              "a cutter"),
          MOST_CUTTERS,
          Shelf::cutters,
          "the cutters; those of the catalogue if left out");
  public static final ListField<Shelf, SparePacking> PACKING =
      new ListField<>(
          "packing",
          PACKING_SHAPE,
          MOST_PACKING,
          false,
          Shelf::packing,
          "packing on hand; card and soft wire if left out");
  public static final Quantities<Shelf> PARALLELS =
      new Quantities<>(
          "parallels",
          new Range(LENGTH, 1e-3, 0.3),
          MOST_PARALLELS,
          Shelf::parallelsM,
          "heights of the pairs of parallels; an ordinary set if left out");
  static final ObjectSchema<Shelf> SHELF_SHAPE =
      new ObjectSchema<>("shelf", List.of(VISES, CUTTERS, PACKING, PARALLELS));

  public static final Choice<MillingJob, UnitSystem> UNITS =
      Choice.of(
          RequestFields.UNITS.name(),
          UnitSystem.class,
          MillingJob::units,
          RequestFields.UNITS.meaning());
  public static final Text<MillingJob> NOTE =
      new Text<>("note", 400, false, job -> null, RequestFields.NOTE.meaning());
  public static final ObjectField<MillingJob, JobReference> JOB =
      ObjectField.of(
          "job", RequestFields.JOB_SHAPE, MillingJob::reference, RequestFields.JOB.meaning());
  public static final ObjectField<MillingJob, Blank> BLANK =
      ObjectField.of(
          "blank", BLANK_SHAPE, MillingJob::blank, "the piece before anything is milled");
  public static final ObjectField<MillingJob, FinishedPart> FINISHED =
      ObjectField.of("finished", FINISHED_SHAPE, MillingJob::finished, "the plate that is wanted");
  public static final ObjectField<MillingJob, Machine> MACHINE =
      ObjectField.onShelf(
          "machine",
          MachineFields.SHAPE,
          Catalogue::machines,
          () -> SpokenShop.MACHINES,
          MillingJob::machine,
          "the machine");
  public static final ObjectField<MillingJob, Shelf> SHELF =
      new ObjectField<>(
          "shelf",
          SHELF_SHAPE,
          null,
          null,
          false,
          MillingJob::shelf,
          "what is on hand; the catalogue of the shop if left out",
          List.of());
  public static final Choice<MillingJob, FeedDrive> FEED_DRIVE =
      Choice.<MillingJob, FeedDrive>of(
              "feedDrive",
              FeedDrive.class,
              MillingJob::feedDrive,
              "hand or power feed; power if left out and the machine has it")
          .mayBeUnknown();
  public static final Choice<MillingJob, HandleEffort> CLAMPING =
      Choice.<MillingJob, HandleEffort>of(
              "clamping",
              HandleEffort.class,
              MillingJob::hardestPull,
              "the hardest pull on the handle that may be planned; hard if left out")
          .mayBeUnknown();
  public static final Quantity<MillingJob> HANDLE_LENGTH =
      Quantity.<MillingJob>of(
              "handleLength",
              LENGTH,
              HoldFields.HANDLE_LENGTH.range().least(),
              HoldFields.HANDLE_LENGTH.range().greatest(),
              job -> null,
              "length of the handle, from the screw to the hand")
          .mayBeUnknown();

  static final ObjectSchema<MillingJob> SHAPE =
      new ObjectSchema<>(
          "job",
          List.of(
              UNITS,
              NOTE,
              JOB,
              BLANK,
              FINISHED,
              MACHINE,
              SHELF,
              FEED_DRIVE,
              CLAMPING,
              HANDLE_LENGTH),
          JobFields::check);

  private JobFields() {}

  private static <O> Quantity<O> size(
      Quantity<?> like, Function<O, @Nullable Double> getter, String meaning) {
    return Quantity.of(
        like.name(), LENGTH, like.range().least(), like.range().greatest(), getter, meaning);
  }

  private static Quantity<FinishedPart> tolerance(
      String name, Function<FinishedPart, @Nullable Double> getter, String meaning) {
    return Quantity.<FinishedPart>of(name, LENGTH, 1e-6, MOST_TOLERANCE_M, getter, meaning)
        .mayBeUnknown();
  }

  private static Choice<Blank, StockSurface> surface(
      String name, Function<Blank, @Nullable StockSurface> getter, String meaning) {
    return Choice.<Blank, StockSurface>of(name, StockSurface.class, getter, meaning)
        .alsoSaid("bright drawn", StockSurface.MACHINED)
        .mayBeUnknown();
  }

  private static void check(Values v, FieldLocation place) {
    Values blank = v.get(BLANK);
    Values finished = v.get(FINISHED);
    if (blank == null || finished == null) {
      return;
    }
    FieldLocation at = place.child(FINISHED.name());
    boolean smaller = false;
    smaller |= checkSize(blank, LENGTH_X, finished, FINISHED_LENGTH, at);
    smaller |= checkSize(blank, THICKNESS, finished, FINISHED_THICKNESS, at);
    smaller |= checkSize(blank, HEIGHT, finished, FINISHED_HEIGHT, at);
    if (!smaller) {
      at.fault(
          null,
          "nothing is to be milled: make one size smaller than the blank",
          "a finished size below that of the blank",
          LENGTH.unit(place.units()).code(),
          null);
    }
  }

  /** Whether something comes off, or it is not known yet. */
  private static boolean checkSize(
      Values blank,
      Quantity<Blank> there,
      Values finished,
      Quantity<FinishedPart> wanted,
      FieldLocation place) {
    Double has = blank.get(there);
    Double becomes = finished.get(wanted);
    if (has == null || becomes == null) {
      return true;
    }
    if (becomes > has) {
      OrderCheck.exceeds(becomes, wanted, has, "the blank", place.child(wanted.name()));
    }
    return becomes != has.doubleValue();
  }

  static MillingJob job(Values v, Catalogue catalogue) {
    Machine machine = MachineFields.machine(v.need(MACHINE));
    HandleEffort hardest = v.get(CLAMPING) == null ? HandleEffort.HARD : v.need(CLAMPING);
    return MillingJobBuilder.builder()
        .reference(RequestFields.reference(v.need(JOB)))
        .blank(blank(v.need(BLANK)))
        .finished(finished(v.need(FINISHED)))
        .machine(machine)
        .shelf(shelf(v.get(SHELF), catalogue))
        .feedDrive(v.get(FEED_DRIVE) == null ? drive(machine) : v.need(FEED_DRIVE))
        .hardestPull(hardest)
        .handleTorqueNm(pulls(hardest, v.get(HANDLE_LENGTH)))
        .units(v.need(UNITS))
        .build();
  }

  private static FeedDrive drive(Machine machine) {
    boolean power = machine.kind() == MachineKind.CNC || machine.greatestFeedMPerS() != null;
    return power ? FeedDrive.POWER : FeedDrive.HAND;
  }

  private static Map<HandleEffort, Band> pulls(HandleEffort hardest, @Nullable Double handleM) {
    Map<HandleEffort, Band> pulls = new EnumMap<>(HandleEffort.class);
    for (HandleEffort effort : HandleEffort.values()) {
      if (effort.compareTo(hardest) <= 0) {
        pulls.put(effort, SpokenShop.torqueNm(effort, handleM));
      }
    }
    return pulls;
  }

  private static Blank blank(Values v) {
    return BlankBuilder.builder()
        .lengthM(v.need(LENGTH_X))
        .thicknessM(v.need(THICKNESS))
        .heightM(v.need(HEIGHT))
        .material(MaterialFields.material(v.need(MATERIAL)))
        .surface(v.get(SURFACE))
        .edges(v.get(EDGES))
        .highSpotM(v.get(HIGH_SPOT))
        .condition(v.get(CONDITION))
        .build();
  }

  private static FinishedPart finished(Values v) {
    return FinishedPartBuilder.builder()
        .lengthM(v.need(FINISHED_LENGTH))
        .thicknessM(v.need(FINISHED_THICKNESS))
        .heightM(v.need(FINISHED_HEIGHT))
        .lengthToleranceM(v.get(LENGTH_TOLERANCE))
        .thicknessToleranceM(v.get(THICKNESS_TOLERANCE))
        .heightToleranceM(v.get(HEIGHT_TOLERANCE))
        .flatnessM(v.get(FLATNESS))
        .roughnessM(v.get(FINISHED_ROUGHNESS))
        .build();
  }

  private static Shelf shelf(@Nullable Values given, Catalogue catalogue) {
    Values v = given == null ? new Values() : given;
    List<Values> vises = v.get(VISES);
    List<Values> cutters = v.get(CUTTERS);
    List<Values> packing = v.get(PACKING);
    List<Double> parallels = v.get(PARALLELS);
    return new Shelf(
        vises == null
            ? List.copyOf(catalogue.vises().values())
            : vises.stream().map(ViseFields::vise).toList(),
        cutters == null
            ? List.copyOf(catalogue.cutters().values())
            : cutters.stream().map(CutterFields::cutter).toList(),
        packing == null
            ? Shelf.COMMON_PACKING
            : packing.stream()
                .map(
                    p ->
                        new SparePacking(
                            p.need(PACKING_KIND), p.need(PACKING_MATERIAL), p.need(PACKING_SIZE)))
                .toList(),
        parallels == null ? Shelf.COMMON_PARALLELS_M : parallels);
  }
}
