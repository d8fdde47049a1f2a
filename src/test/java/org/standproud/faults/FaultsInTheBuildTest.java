package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.api.RunningService;
import org.standproud.faults.fuzz.ContractOperations;
import org.standproud.faults.fuzz.HostileRequests;
import org.standproud.faults.fuzz.Shop;
import org.standproud.faults.fuzz.Verdicts;

/** Those trials that are short enough for every build. */
@IntegrationTest
class FaultsInTheBuildTest {

  /** Each path and method of the contract is met about once. */
  private static final int HOSTILE = 80;

  private @TempDir Path work;

  @Test
  void noHostileRequestOverTheContractIsAnsweredByAFaultOfTheService() throws Exception {
    Verdicts verdicts = new Verdicts();
    try (RunningService service = RunningService.start(work, Path.of("rules"))) {
      HostileRequests requests =
          new HostileRequests(
              ContractOperations.read(Path.of("api-docs/openapi.yaml")),
              new Shop(service.caller()),
              URI.create("http://127.0.0.1:" + service.caller().port()),
              Trials.seed());
      for (int number = 0; number < HOSTILE; number++) {
        verdicts.send(requests.request(number));
      }
    }
    assertThat(verdicts.wrong()).isEmpty();
    assertThat(verdicts.statuses().keySet()).as("some get far").contains(200, 400, 404, 422);
  }

  @Test
  void aServiceOutlivesItsDatabaseAndSaysMeanwhileWhenToComeAgain() throws Exception {
    new DatabaseGoneTrial(1).run(work, new Figures());
  }

  @Test
  void theProofNamesEachDamagedRecordAndTheOthersAreServed() throws Exception {
    new CorruptRowTrial().run(work, new Figures());
  }

  @Test
  void theRuleBaseInServiceOutlivesItsFolder() throws Exception {
    new RulesEmptiedTrial().run(work, new Figures());
  }
}
