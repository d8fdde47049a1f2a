package org.standproud.rules.publishing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.gate.CardFolder;
import org.standproud.rules.impact.Impact;

/**
 * Takes what was edited in the folder of cards to the desk, and only that: a card that changed over
 * another way since stays as it serves. What a folder held when the program was last running is not
 * known, so at first a text counts as edited if no revision ever had it, and nothing as taken away.
 */
public final class FolderEdits {

  private final RuleBasePublisher desk;
  private final String author;

  /** What the folder held when its edits were last taken; null until then. */
  private @Nullable Map<String, String> taken;

  /**
   * Nothing is taken yet.
   *
   * @param desk where edits go
   * @param author in whose name
   */
  public FolderEdits(RuleBasePublisher desk, String author) {
    this.desk = desk;
    this.author = author;
  }

  /**
   * Takes the edits.
   *
   * @param now what the folder holds
   * @return what became of them; Unchanged if there are none; edits that do not come into service
   *     are taken again next time, together with those made since
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
    return taken == null
        ? "the cards as they stand in the folder"
        : "edited in the folder of cards";
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
