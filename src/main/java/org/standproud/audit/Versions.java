package org.standproud.audit;

/**
 * The versions that produced an answer.
 *
 * @param ruleBase revision of the rule base
 * @param catalogue revision of the catalogue
 * @param engine version of this program
 */
public record Versions(String ruleBase, String catalogue, String engine) {

  /** Refuses words that cannot be searched for. */
  public Versions {
    Words.required("rule-base revision", ruleBase);
    Words.required("catalogue revision", catalogue);
    Words.required("engine version", engine);
  }
}
