package org.standproud.rules.gate;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.engine.RuleBase;

/**
 * The rule base in service. An assessment reads it once and finishes on it; a refused publication
 * leaves the previous one in service.
 */
public final class ActiveRuleBase {

  private final AtomicReference<@Nullable RuleBase> active = new AtomicReference<>();

  /** Empty until a first rule base is published. */
  public ActiveRuleBase() {}

  /** The rule base in service, if there is one. */
  public Optional<RuleBase> get() {
    return Optional.ofNullable(active.get());
  }

  /**
   * Puts a published rule base into service; a refusal changes nothing.
   *
   * @param result the result of the gate
   * @return whether the rule base in service changed
   */
  public boolean accept(GateResult result) {
    if (result instanceof GateResult.Published published) {
      active.set(published.ruleBase());
      return true;
    }
    return false;
  }
}
