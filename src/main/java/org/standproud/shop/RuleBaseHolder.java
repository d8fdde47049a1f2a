package org.standproud.shop;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.publishing.FolderEdits;
import org.standproud.rules.publishing.PublishResult;
import org.standproud.rules.publishing.RuleBasePublisher;

/**
 * The folder of rule cards and the rule base in service. Edits in the folder are published; if the
 * gate refuses them, nothing changes and the errors are reported.
 */
public final class RuleBaseHolder {

  private static final String AUTHOR = "rules folder";

  private final Path folder;
  private final RuleBasePublisher desk;
  private final FolderEdits edits;
  private volatile List<CardError> ofFolder = List.of();
  private volatile List<CardError> ofStore = List.of();

  /**
   * Creates a holder without a rule base.
   *
   * @param folder the folder
   * @param desk publishes the edits
   */
  public RuleBaseHolder(Path folder, RuleBasePublisher desk) {
    this.folder = folder;
    this.desk = desk;
    this.edits = new FolderEdits(desk, AUTHOR);
  }

  /** Publishes the edits in the folder. */
  public PublishResult load() {
    try {
      return take(CardFolder.read(folder));
    } catch (UncheckedIOException e) {
      Path last = folder.getFileName(); // a root has none
      String name = last == null ? folder.toString() : last.toString();
      String message = "the folder of rule cards cannot be read";
      ofFolder = List.of(new CardError(name, 1, 1, "", message, null, null));
      return new PublishResult.Refused(ofFolder, List.of());
    }
  }

  /**
   * Publishes the edits in the folder.
   *
   * @param contents the content of the folder
   */
  public PublishResult take(CardFolder.Contents contents) {
    PublishResult answer = edits.take(contents);
    if (answer instanceof PublishResult.Stale) { // Another replica was a moment earlier.
      desk.follow();
      answer = edits.take(contents);
    }
    ofFolder = faults(answer);
    return answer;
  }

  /** Puts into service what another replica published, or what was last in service. */
  public PublishResult follow() {
    PublishResult answer = desk.follow();
    ofStore = faults(answer);
    return answer;
  }

  private static List<CardError> faults(PublishResult answer) {
    return answer instanceof PublishResult.Refused refused ? refused.errors() : List.of();
  }

  /** The rule base in service, if there is one. */
  public Optional<RuleBase> ruleBase() {
    return desk.inService();
  }

  /** The errors of the last read; may be empty. */
  public List<CardError> faults() {
    return Stream.concat(ofFolder.stream(), ofStore.stream()).toList();
  }
}
