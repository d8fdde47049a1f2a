package org.standproud.setup;

/** How the machine is driven. */
public enum MachineKind implements Worded {
  /** Hand wheels, perhaps with a power feed. */
  MANUAL("manual"),
  /** Numerically controlled. */
  CNC("cnc");

  private final String words;

  MachineKind(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
