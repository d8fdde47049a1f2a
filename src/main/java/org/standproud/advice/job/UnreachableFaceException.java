package org.standproud.advice.job;

/** No vise, grip or cutter on hand reaches a face of the job. */
public final class UnreachableFaceException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final Face face;
  private final Lack lack;
  private final double neededM;

  /** What is lacking. */
  public enum Lack {
    /** A vise that opens as wide as the stock. */
    OPENING,
    /** Room for the jaws beside the cut. */
    GRIP,
    /** A cutter that is wide enough for the face. */
    DIAMETER,
  }

  UnreachableFaceException(Face face, Lack lack, double neededM) {
    super("no " + lack + " for " + face.words());
    this.face = face;
    this.lack = lack;
    this.neededM = neededM;
  }

  /** The face. */
  public Face face() {
    return face;
  }

  /** What is lacking. */
  public Lack lack() {
    return lack;
  }

  /** How much is needed, in m. */
  public double neededM() {
    return neededM;
  }
}
