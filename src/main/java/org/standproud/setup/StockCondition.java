package org.standproud.setup;

/** How the stock was delivered, which decides the stress that is locked in it. */
public enum StockCondition implements Worded {
  /** Annealed after working. */
  STRESS_RELIEVED("stress relieved"),
  /** Aluminium plate stretched after quenching, as in temper T651. */
  STRETCHED("stretched"),
  /** Rolled hot and left as it was. */
  HOT_ROLLED("hot rolled"),
  /** Drawn or rolled cold to size. */
  COLD_DRAWN("cold drawn"),
  /** A casting, not aged or annealed. */
  AS_CAST("as cast");

  private final String words;

  StockCondition(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
