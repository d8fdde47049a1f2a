package org.standproud.api.assessing;

import java.util.Optional;
import java.util.function.Supplier;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.Engine;
import org.standproud.audit.replay.Made;
import org.standproud.audit.replay.Occasion;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.reading.CanonicalText;
import org.standproud.setup.reading.Reading;
import org.standproud.setup.reading.SetupReader;

/** This program as what answers are given again with. */
public final class ThisProgram implements Engine {

  private final String version;
  private final Making making;
  private final Supplier<Catalogue> shelves;

  /**
   * The program as it runs.
   *
   * @param version its version
   * @param making makes answers
   * @param shelves gives the catalogue of today
   */
  public ThisProgram(String version, Making making, Supplier<Catalogue> shelves) {
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
  public Made make(CanonicalJson setup, RuleBase rules, Occasion occasion) {
    return making.make(CanonicalText.setup(setup.text()), rules, occasion);
  }

  @Override
  public Optional<CanonicalJson> resolve(CanonicalJson request) {
    return new SetupReader(shelves.get()).read(request.tree()) instanceof Reading.Accepted accepted
        ? Optional.of(Making.kept(accepted.setup()))
        : Optional.empty();
  }
}
