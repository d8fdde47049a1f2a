package org.standproud.mechanics.published;

import java.util.List;

/** A section of the page of the mechanics: its title and the classes whose javadoc it shows. */
public enum Subject {
  /** Plan view of the pass. */
  ENGAGEMENT(
      "Engagement",
      "engagement.FeedFrame",
      "engagement.Arc",
      "engagement.EdgeInCut",
      "direction.FirstContact"),
  /** Force laws and their sum over the teeth. */
  FORCE(
      "Cutting force",
      "force.KienzleLaw",
      "force.ThinChip",
      "force.CorrectedKienzle",
      "force.LinearEdgeLaw",
      "force.PublishedForce",
      "force.RevolutionSweep",
      "force.ToothRing"),
  /** Constants of the stock and published cutting data. */
  MATERIAL("Stock and cutting data", "cutter.PublishedRange"),
  /** Power and torque. */
  POWER("Power and torque", "spindle.CuttingPower"),
  /** Clamping and friction. */
  HOLDING(
      "Holding",
      "holding.screw.ScrewThread",
      "holding.jaw.JawFriction",
      "holding.jaw.RigidLimits",
      "holding.jaw.BestPackingDepth",
      "holding.jaw.JawSpan",
      "holding.jaw.BackingHold",
      "coupling.EndLoad",
      "holding.slip.JawGrip",
      "holding.GrippedRoot",
      "holding.other.TableHold",
      "holding.other.LyingStock",
      "holding.other.BackedBlock"),
  /** Contact of rods and faces. */
  CONTACT(
      "Contact",
      "holding.contact.LineContact",
      "holding.contact.JointStiffness",
      "holding.contact.ElasticRoot"),
  /** The standing plate. */
  PLATE(
      "Plate",
      "plate.CantileverPlate",
      "plate.StandingStock",
      "plate.GrippedFoot",
      "plate.PlateOnFoot",
      "plate.FootBending",
      "plate.PlateSurface",
      "plate.BackedPlate"),
  /** Forced and self-excited vibration. */
  VIBRATION(
      "Vibration",
      "vibration.ForcedResponse",
      "vibration.StabilityLobes",
      "vibration.CoupledCut",
      "vibration.CoupledDepth",
      "vibration.FlankDamping"),
  /** Bending of the cutter. */
  CUTTER(
      "Cutter",
      "cutter.SteppedCantilever",
      "cutter.CutterBeam",
      "tooltip.ToolOnSpindle",
      "tooltip.SpindleNose",
      "tooltip.TipModes"),
  /** Feed drive and table. */
  DRIVE("Feed drive", "drive.TableLurch"),
  /** Travel of the machine and what would meet on the way. */
  REACH(
      "Reach and collision",
      "reach.Reach",
      "reach.EndView",
      "reach.SideView",
      "reach.CutterPart",
      "reach.Clearance"),
  /** Surface left. */
  FINISH(
      "Finish",
      "finish.CornerMark",
      "finish.PeripheralMark",
      "finish.SharpCornerMark",
      "finish.TramError",
      "finish.RoughnessGrade",
      "finish.LayerRemoval"),
  /** Time of a pass. */
  TIME("Time", "time.PassTime"),
  /** How likely a hold is to hold. */
  SAMPLING(
      "Bands and sampling",
      "sampling.HoldingChance",
      "sampling.Triangle",
      "sampling.CorrelationRatio",
      "sampling.SamplingPlan");

  private final String title;
  private final List<String> classes;

  Subject(String title, String... classes) {
    this.title = title;
    this.classes = List.of(classes);
  }

  /** Heading of the section. */
  public String title() {
    return title;
  }

  /** Classes of {@code org.standproud.mechanics} whose javadoc is shown, by package and name. */
  public List<String> classes() {
    return classes;
  }
}
