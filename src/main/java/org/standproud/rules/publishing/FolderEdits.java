package org.standproud.rules.publishing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.impact.Impact;

/**
 * Publishes edits in the folder of cards, and only those: a card that was changed in another way
 * since keeps that change. What the folder held when the program last ran is not known, so at first
 * a text counts as edited if no revision ever had it, and no file counts as deleted.
 */
public final class FolderEdits {

  private final RuleBasePublisher desk;
  private final String author;

  /** What the folder held when its edits were last published; null until then. */
  private @Nullable Map<String, String> taken;

  /**
   * Creates the publisher.
   *
   * @param desk publishes the edits
   * @param author author of the edits
   */
  public FolderEdits(RuleBasePublisher desk, String author) {
    this.desk = desk;
    this.author = author;
  }

  /**
   * Publishes the edits.
   *
   * @param now the content of the folder
   * @return the result; Unchanged if there are no edits; edits that do not go into service are
   *     tried again next time, together with later ones
   */
  public synchronized PublishResult take(CardFolder.Contents now) {
    if (!now.errors().isEmpty()) {
      return new PublishResult.Refused(now.errors(), List.of());
    }
    PublishResult answer =
        desk.publish(edit(now.files()), author, note(), Impact.Progress.UNWATCHED);
    if (answer instanceof PublishResult.Published || answer instanceof PublishResult.Unchanged) {
      taken = now.files();
    }
    return answer;
  }

  private String note() {
    return taken == null ? "the cards of the folder" : "edited in the folder of cards";
  }

  private CardEdit edit(Map<String, String> now) {
    if (taken != null) {
      return CardEdit.between(taken, now);
    }
    Map<String, String> written = new TreeMap<>(now);
    written.keySet().retainAll(desk.unseen(now));
    return CardEdit.of(written);
  }
}
