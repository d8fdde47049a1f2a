package org.standproud.audit.records;

import java.util.List;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.replay.KeptRuleBase;

/**
 * What every record and every rule base is followed by, written in the same transaction through the
 * data source of the records.
 */
public interface AppendListener {

  /** Nothing follows. */
  AppendListener NOTHING =
      new AppendListener() {
        @Override
        public void records(List<ChainRecord> records) {}

        @Override
        public void ruleBase(KeptRuleBase ruleBase) {}
      };

  /**
   * Follows records into the chain.
   *
   * @param records those of one transaction, in their order
   */
  void records(List<ChainRecord> records);

  /**
   * Follows a rule base that is kept for the first time.
   *
   * @param ruleBase the rule base
   */
  void ruleBase(KeptRuleBase ruleBase);
}
