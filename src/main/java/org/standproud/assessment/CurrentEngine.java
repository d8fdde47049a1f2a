package org.standproud.assessment;

import java.util.Optional;
import java.util.function.Supplier;
import org.standproud.audit.Results;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.audit.replay.AssessmentResult;
import org.standproud.audit.replay.Engine;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CanonicalText;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import tools.jackson.core.JacksonException;

/** The running program as the engine of replays. */
public final class CurrentEngine implements Engine {

  private final String version;
  private final AssessmentPipeline making;
  private final Supplier<Catalogue> shelves;

  /**
   * Creates the engine.
   *
   * @param version its version
   * @param making computes answers
   * @param shelves returns today's catalogue
   */
  public CurrentEngine(String version, AssessmentPipeline making, Supplier<Catalogue> shelves) {
    this.version = version;
    this.making = making;
    this.shelves = shelves;
  }

  @Override
  public String version() {
    return version;
  }

  @Override
  public String catalogue() {
    return shelves.get().revision();
  }

  @Override
  public AssessmentResult make(CanonicalJson setup, RuleBase rules, AssessmentContext occasion) {
    return making.make(CanonicalText.setup(setup.text()), rules, occasion);
  }

  @Override
  public CanonicalJson inShort(Results results) {
    if (results instanceof Results.Short brief) {
      return brief.text();
    }
    try {
      return ResultsInShort.read(results).text();
    } catch (JacksonException e) {
      throw new IllegalArgumentException("results that cannot be read", e);
    }
  }

  @Override
  public Optional<CanonicalJson> resolve(CanonicalJson request) {
    return new SetupReader(shelves.get()).read(request.tree()) instanceof Reading.Accepted accepted
        ? Optional.of(AssessmentPipeline.kept(accepted.setup()))
        : Optional.empty();
  }
}
