package org.standproud.audit;

/**
 * What the answer was made with; the same versions must give the same answer again.
 *
 * @param ruleBase revision of the rule base
 * @param catalogue revision of the catalogue that set-ups were resolved against
 * @param engine version of the program
 */
public record Versions(String ruleBase, String catalogue, String engine) {

  /** Refuses words that could not be searched for. */
  public Versions {
    Words.required("rule-base revision", ruleBase);
    Words.required("catalogue revision", catalogue);
    Words.required("engine version", engine);
  }
}
