package org.standproud.mechanics.engagement;

/**
 * The stretches of a pass, as travel of the cutter axis past the end where the pass starts, in m
 * (negative before that end). With the arc phi_st..phi_ex and d the distance of a stock end ahead
 * of the axis, a tooth meets stock where R sin(phi) lies between the near and the far end; hence
 * the lead-in lasts while R sin(phi_max) over d over R sin(phi_min).
 *
 * @param firstContactM where the cutter first touches the stock
 * @param leadInEndM where the whole arc is in the stock for the first time
 * @param runOutStartM where the first part of the arc runs out of the stock
 * @param lastContactM where the cutter leaves the stock
 */
public record PassTravel(
    double firstContactM, double leadInEndM, double runOutStartM, double lastContactM) {

  /**
   * The stretches of a pass that cuts.
   *
   * @param geometry the pass seen from above
   * @param arc its steady arc
   */
  public static PassTravel of(PassGeometry geometry, Arc arc) {
    double reachM = geometry.radiusM() * arc.greatestSine();
    double tailM = geometry.radiusM() * arc.leastSine();
    return new PassTravel(-reachM, -tailM, geometry.lengthM() - reachM, geometry.lengthM() - tailM);
  }

  /** Whether the whole arc is ever in the stock at once; a short stock may be too short for it. */
  public boolean reachesSteady() {
    return runOutStartM >= leadInEndM;
  }

  /** Which stretch a place belongs to. */
  public PassStretch stretchAt(double travelM) {
    if (travelM > runOutStartM) {
      return PassStretch.RUN_OUT;
    }
    return travelM < leadInEndM ? PassStretch.LEAD_IN : PassStretch.STEADY;
  }
}
