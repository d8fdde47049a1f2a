package org.standproud.mechanics.sampling;

/** What is drawn, with the request path a better value would come in by. */
public enum Unknown {
  /** kc1.1 of the stock. */
  SPECIFIC_FORCE("specific cutting force of the stock", "stock.material"),
  /** mc of the stock. */
  EXPONENT("chip exponent of the stock", "stock.material"),
  /** Wear, process, tool and rake together. */
  FORCE_FACTOR("state of the edges", "cutter.edge"),
  /** Normal to tangential force. */
  NORMAL_RATIO("thrust of the edges against their pull", "cutter.edge"),
  /** Along-edge to tangential force. */
  LIFT_RATIO("lift of the helix", "cutter.helix"),
  /** Feed per tooth. */
  FEED("feed per tooth", "cut.feedPerTooth"),
  /** Run-out. */
  RUN_OUT("run-out of the cutter", "cutter.runOut"),
  /** Clamping force. */
  CLAMPING_FORCE("clamping force", "hold.clampingForce"),
  /** Jaw friction. */
  FRICTION("friction of the jaws", "hold.jawFriction"),
  /** Bearing of the jaws. */
  BEARING("where the jaws bear", "hold.packing"),
  /** Stiffness of the fixed jaw. */
  FIXED_JAW("stiffness of the fixed jaw", "hold.vise"),
  /** Stiffness of the movable jaw. */
  MOVABLE_JAW("stiffness of the movable jaw", "hold.vise");

  private final String words;
  private final String path;

  Unknown(String words, String path) {
    this.words = words;
    this.path = path;
  }

  /** As a machinist would say it. */
  public String words() {
    return words;
  }

  /** The request path by which a better value comes in. */
  public String path() {
    return path;
  }
}
