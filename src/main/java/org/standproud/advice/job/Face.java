package org.standproud.advice.job;

import org.standproud.setup.Worded;

/** The six faces of a plate. */
public enum Face implements Worded {
  /** The broad side that is milled first. */
  SIDE_A("broad side A"),
  /** The broad side opposite. */
  SIDE_B("broad side B"),
  /** The long edge that is milled first. */
  EDGE_A("long edge A"),
  /** The long edge opposite. */
  EDGE_B("long edge B"),
  /** The end that is milled first. */
  END_A("end A"),
  /** The end opposite. */
  END_B("end B");

  private final String words;

  Face(String words) {
    this.words = words;
  }

  /** The face opposite. */
  public Face opposite() {
    return switch (this) {
      case SIDE_A -> SIDE_B;
      case SIDE_B -> SIDE_A;
      case EDGE_A -> EDGE_B;
      case EDGE_B -> EDGE_A;
      case END_A -> END_B;
      case END_B -> END_A;
    };
  }

  @Override
  public String words() {
    return words;
  }
}
