package org.standproud.audit.records;

import java.util.List;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.replay.KeptRuleBase;

/**
 * Called for every record and rule base, in the same transaction, through the data source of the
 * records.
 */
public interface AppendListener {

  /** Does nothing. */
  AppendListener NOTHING =
      new AppendListener() {
        @Override
        public void records(List<ChainRecord> records) {}

        @Override
        public void ruleBase(KeptRuleBase ruleBase) {}
      };

  /**
   * Called for new records.
   *
   * @param records the records of one transaction, in order
   */
  void records(List<ChainRecord> records);

  /**
   * Called for a rule base stored for the first time.
   *
   * @param ruleBase the rule base
   */
  void ruleBase(KeptRuleBase ruleBase);
}
