package org.standproud.command.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.DemonstrationSetups;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.RetiredCards;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import picocli.CommandLine.Option;

/** The folders of cards and catalogue. */
final class CardsOnDisk {

  @Option(
      names = "--rules",
      defaultValue = "rules",
      description = "Folder of the cards (default: ${DEFAULT-VALUE}).")
  private Path rules = Path.of("rules");

  @Option(
      names = "--shop",
      defaultValue = "seeds",
      description = "Folder of the catalogue and its set-ups (default: ${DEFAULT-VALUE}).")
  private Path shop = Path.of("seeds");

  Path rules() {
    return rules;
  }

  Catalogue catalogue() {
    try {
      return CatalogueReader.read(shop) instanceof CatalogueReading.Loaded loaded
          ? loaded.catalogue()
          : Catalogue.EMPTY;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Gate gate() {
    DemonstrationSetups setups = new DemonstrationSetups(shop.resolve("setups"), catalogue());
    return new Gate(
        Vocabulary.all(),
        new QuantityText(),
        setups::evidence,
        Coverage.Demand.REFUSE,
        RetiredCards.listed());
  }

  /** The cards of the folder, with the report of the gate. */
  Gate.Draft draft(Gate gate) {
    CardFolder.Contents contents = CardFolder.read(rules);
    Authorship by = new Authorship("command", "read from " + rules, Instant.EPOCH, null);
    return contents.errors().isEmpty()
        ? gate.draft(contents.files(), by)
        : gate.refused(contents.errors());
  }
}
