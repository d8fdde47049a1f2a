package org.standproud.advice.remedy;

import org.standproud.setup.Band;
import org.standproud.setup.Worded;

/**
 * The kinds of change a machinist can make, in the order in which they are put together: packing is
 * placed last because its best depth depends on everything else. Set-up times are bands by common
 * practice, no source.
 */
public enum ChangeKind implements Worded {
  /** Another cutter of the shop. */
  CUTTER("another cutter", 5, 10, 20),
  /** Less depth along the axis, in more passes. */
  DEPTH("less depth, more passes", 0.2, 0.5, 1),
  /** Less depth into the broad side, in more passes. */
  SIDE_DEPTH("less radial depth, more passes", 0.2, 0.5, 1),
  /** Another feed per tooth. */
  FEED("another feed", 0.2, 0.5, 1),
  /** Power feed in the place of the hand. */
  DRIVE("power feed", 0.5, 1, 2),
  /** Another speed of the spindle. */
  SPEED("another speed", 0.5, 1, 2),
  /** The cutter axis at another place across the top edge. */
  OFFSET("cutter moved across", 0.5, 1, 3),
  /** The top edge fed the other way. */
  DIRECTION("feed reversed", 0.5, 1, 2),
  /** The broad side fed the other way: climb for conventional or the reverse. */
  MODE("climb and conventional exchanged", 0.5, 1, 2),
  /** Slides locked or snugged. */
  SLIDES("slides locked", 0.3, 0.5, 1),
  /** The gripped faces made flat. */
  FACES("gripped faces made flat", 10, 20, 45),
  /** Burrs taken off the gripped edges. */
  DEBURR("gripped edges deburred", 1, 2, 5),
  /** More stock inside the jaws. */
  GRIP("deeper grip", 5, 10, 20),
  /** Parallels under the stock. */
  SEAT("parallels under the stock", 3, 5, 10),
  /** More force on the jaws. */
  CLAMP("clamped harder", 0.5, 1, 3),
  /** A stop at an end of the stock. */
  STOP("a stop", 3, 5, 15),
  /** Packing put in, moved or taken out. */
  PACKING("packing", 2, 5, 15);

  private final String words;
  private final Band setUpS;

  ChangeKind(String words, double leastMin, double likelyMin, double greatestMin) {
    this.words = words;
    this.setUpS = new Band(60 * leastMin, 60 * likelyMin, 60 * greatestMin);
  }

  @Override
  public String words() {
    return words;
  }

  /** Time to make the change in s: common practice, no source. */
  public Band setUpS() {
    return setUpS;
  }
}
