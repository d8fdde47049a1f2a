package org.standproud.audit;

/**
 * The versions that produced an answer; the same versions must give the same answer again.
 *
 * @param ruleBase revision of the rule base
 * @param catalogue revision of the catalogue that resolved the set-up
 * @param engine version of the program
 */
public record Versions(String ruleBase, String catalogue, String engine) {

  /** Refuses words that cannot be searched for. */
  public Versions {
    Words.required("rule-base revision", ruleBase);
    Words.required("catalogue revision", catalogue);
    Words.required("engine version", engine);
  }
}
