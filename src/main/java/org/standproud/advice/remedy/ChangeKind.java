package org.standproud.advice.remedy;

import org.standproud.setup.Band;
import org.standproud.setup.Worded;

/**
 * The kinds of change a machinist can make, in the order in which they are applied: packing last
 * because its best depth depends on everything else. Each has a rank in the order in which a
 * toolmaker tries changes: the hold before the cut. Ranks and set-up times, which are bands, are
 * common practice, no source.
 */
public enum ChangeKind implements Worded {
  /** Another cutter of the shop. */
  CUTTER("another cutter", 7, 5, 10, 20),
  /** Less depth along the axis, in more passes. */
  DEPTH("less depth, more passes", 10, 0.2, 0.5, 1),
  /** Less depth into the broad side, in more passes. */
  SIDE_DEPTH("less radial depth, more passes", 10, 0.2, 0.5, 1),
  /** Another feed per tooth. */
  FEED("another feed", 8, 0.2, 0.5, 1),
  /** Power feed instead of hand feed. */
  DRIVE("power feed", 3, 0.5, 1, 2),
  /** Another speed of the spindle. */
  SPEED("another speed", 8, 0.5, 1, 2),
  /** The cutter axis at another position across the top edge. */
  OFFSET("cutter moved across", 3, 0.5, 1, 3),
  /** The top edge fed the other way. */
  DIRECTION("feed reversed", 3, 0.5, 1, 2),
  /** The broad side fed the other way: climb instead of conventional or the reverse. */
  MODE("climb and conventional exchanged", 3, 0.5, 1, 2),
  /** Slides locked or snugged. */
  SLIDES("slides locked", 1, 0.3, 0.5, 1),
  /** The gripped faces made flat. */
  FACES("gripped faces made flat", 6, 10, 20, 45),
  /** Burrs taken off the gripped edges. */
  DEBURR("gripped edges deburred", 1, 1, 2, 5),
  /** More stock inside the jaws. */
  GRIP("deeper grip", 1, 5, 10, 20),
  /** Higher jaws, or soft jaws milled in place. */
  JAWS("other jaws", 9, 15, 30, 60),
  /** Parallels under the stock. */
  SEAT("parallels under the stock", 1, 3, 5, 10),
  /** More force on the jaws. */
  CLAMP("clamped harder", 6, 0.5, 1, 3),
  /** A stop at an end of the stock. */
  STOP("a stop", 4, 3, 5, 15),
  /** A block or an angle plate behind the plate above the jaws. */
  BACKING("a backing", 5, 8, 15, 30),
  /** Packing inserted, moved or removed. */
  PACKING("packing", 2, 2, 5, 15);

  private final String words;
  private final int turn;
  private final Band setUpS;

  ChangeKind(String words, int turn, double leastMin, double likelyMin, double greatestMin) {
    this.words = words;
    this.turn = turn;
    this.setUpS = new Band(60 * leastMin, 60 * likelyMin, 60 * greatestMin);
  }

  @Override
  public String words() {
    return words;
  }

  /** Rank in a toolmaker's order: 1 first, a lighter cut last. */
  public int turn() {
    return turn;
  }

  /** Time to make the change in s: common practice, no source. */
  public Band setUpS() {
    return setUpS;
  }
}
