package org.standproud.setup;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How the stock is held in a vise.
 *
 * @param vise the vise
 * @param gripDepthM height of stock inside the jaws in m
 * @param clampingForceN clamping force in N; null if not known
 * @param handleTorqueNm torque on the screw in N m; null if not known
 * @param jawFriction coefficient of friction between stock and jaw; null if not known
 * @param packing the packing, perhaps none
 * @param seat what the underside sits on; null if not known
 * @param stop where a stop stands; null if not known
 * @param stopHeightM height of the top of the stop above the jaw top in m; null if not known
 * @param clamps clamps and straps beside the stock; empty if none are given
 * @param backing what stands behind the plate above the jaws; empty if nothing is given
 * @param viseRunOutM deviation of the fixed jaw from the table travel over its width in m; null if
 *     not indicated
 * @param effort how hard the handle was pulled, in words; null if not given so. The torque stands
 *     in {@code handleTorqueNm} also then
 * @param faces what is on the gripped faces; null if not known
 * @param alongM place of the middle of the stock along X from the middle of the jaws in m; null if
 *     not known, when it is taken as in the middle
 * @param measured what was measured on the stock in this hold
 */
public record Hold(
    Vise vise,
    double gripDepthM,
    @Nullable Band clampingForceN,
    @Nullable Band handleTorqueNm,
    @Nullable Band jawFriction,
    List<Packing> packing,
    @Nullable Seat seat,
    @Nullable Stop stop,
    @Nullable Double stopHeightM,
    List<Clamp> clamps,
    List<Backing> backing,
    @Nullable Double viseRunOutM,
    @Nullable HandleEffort effort,
    @Nullable JawFaces faces,
    @Nullable Double alongM,
    HeldMeasurement measured) {

  /** Copies the lists; a hold stored before clamps or measurements were part of it has none. */
  public Hold {
    packing = List.copyOf(packing);
    clamps = missing(clamps) ? List.of() : List.copyOf(clamps);
    backing = missing(backing) ? List.of() : List.copyOf(backing);
    measured = missing(measured) ? HeldMeasurement.NONE : measured;
  }

  private static boolean missing(@Nullable Object part) {
    return part == null;
  }

  /**
   * Starts the builder of a hold with only a vise and a grip depth.
   *
   * @param vise the vise
   * @param gripDepthM height of stock inside the jaws in m
   */
  public static Builder in(Vise vise, double gripDepthM) {
    return new Builder(vise, gripDepthM);
  }

  /** Starts a builder with the values of this hold. */
  public Builder but() {
    return in(vise, gripDepthM)
        .clamping(clampingForceN, handleTorqueNm, jawFriction)
        .packing(packing)
        .seat(seat)
        .stop(stop)
        .stopHeight(stopHeightM)
        .clamps(clamps)
        .backing(backing)
        .viseRunOut(viseRunOutM)
        .effort(effort)
        .faces(faces)
        .along(alongM)
        .measured(measured);
  }

  /** The same in another vise. */
  public Hold in(Vise other) {
    return new Hold(
        other,
        gripDepthM,
        clampingForceN,
        handleTorqueNm,
        jawFriction,
        packing,
        seat,
        stop,
        stopHeightM,
        clamps,
        backing,
        viseRunOutM,
        effort,
        faces,
        alongM,
        HeldMeasurement.NONE);
  }

  /** Everything that stands beside the stock: clamps, straps and backing. */
  public List<Clamp> beside() {
    return Stream.concat(clamps.stream(), backing.stream().map(Backing::body)).toList();
  }

  /**
   * Thickness of what lies between the stock and one jaw.
   *
   * @param side the jaw
   * @return in m; 0 where nothing lies there
   */
  public double packingM(JawSide side) {
    return packing.stream()
        .filter(piece -> piece.side() == side)
        .mapToDouble(Packing::sizeM)
        .max()
        .orElse(0);
  }

  /**
   * Builds a hold; what is not set is not known. Units as in the record. What was measured is
   * dropped when the hold is changed afterwards.
   */
  public static final class Builder {
    private final Vise vise;
    private double gripDepthM;
    private @Nullable Band clampingForceN;
    private @Nullable Band handleTorqueNm;
    private @Nullable Band jawFriction;
    private List<Packing> packing = List.of();
    private @Nullable Seat seat;
    private @Nullable Stop stop;
    private @Nullable Double stopHeightM;
    private List<Clamp> clamps = List.of();
    private List<Backing> backing = List.of();
    private @Nullable Double viseRunOutM;
    private @Nullable HandleEffort effort;
    private @Nullable JawFaces faces;
    private @Nullable Double alongM;
    private HeldMeasurement measured = HeldMeasurement.NONE;

    private Builder(Vise vise, double gripDepthM) {
      this.vise = vise;
      this.gripDepthM = gripDepthM;
    }

    /** Returns the hold that was built. */
    public Hold held() {
      return new Hold(
          vise,
          gripDepthM,
          clampingForceN,
          handleTorqueNm,
          jawFriction,
          packing,
          seat,
          stop,
          stopHeightM,
          clamps,
          backing,
          viseRunOutM,
          effort,
          faces,
          alongM,
          measured);
    }

    /** Height of stock inside the jaws in m. */
    public Builder grip(double depthM) {
      gripDepthM = depthM;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /**
     * Clamping force in N, torque on the screw in N m and friction at the jaws; words of another
     * torque are dropped.
     */
    public Builder clamping(
        @Nullable Band forceN, @Nullable Band torqueNm, @Nullable Band friction) {
      if (!Objects.equals(torqueNm, handleTorqueNm)) {
        effort = null;
      }
      clampingForceN = forceN;
      measured = HeldMeasurement.NONE;
      handleTorqueNm = torqueNm;
      jawFriction = friction;
      return this;
    }

    /** The packing. */
    public Builder packing(List<Packing> pieces) {
      packing = pieces;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** What the underside sits on. */
    public Builder seat(@Nullable Seat other) {
      seat = other;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** Where a stop stands. */
    public Builder stop(@Nullable Stop other) {
      stop = other;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** Height of the top of the stop above the jaw top in m. */
    public Builder stopHeight(@Nullable Double heightM) {
      stopHeightM = heightM;
      return this;
    }

    /** Clamps and straps beside the stock. */
    public Builder clamps(List<Clamp> standing) {
      clamps = standing;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** What stands behind the plate above the jaws. */
    public Builder backing(List<Backing> behind) {
      backing = behind;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** Deviation of the fixed jaw from the table travel in m. */
    public Builder viseRunOut(@Nullable Double runOutM) {
      viseRunOutM = runOutM;
      return this;
    }

    /** How hard the handle was pulled, in words. */
    public Builder effort(@Nullable HandleEffort pull) {
      effort = pull;
      return this;
    }

    /** What is on the gripped faces. */
    public Builder faces(@Nullable JawFaces state) {
      faces = state;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** Place of the middle of the stock along X from the middle of the jaws in m. */
    public Builder along(@Nullable Double placeM) {
      alongM = placeM;
      measured = HeldMeasurement.NONE;
      return this;
    }

    /** What was measured on the stock in the hold as it is now built. */
    public Builder measured(HeldMeasurement values) {
      measured = values;
      return this;
    }
  }
}
