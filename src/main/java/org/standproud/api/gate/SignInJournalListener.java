package org.standproud.api.gate;

import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.event.InteractiveAuthenticationSuccessEvent;
import org.standproud.access.Caller;
import org.standproud.access.journal.AccessEntry;
import org.standproud.access.journal.AccessJournal;

/** Writes sign-ins to the journal. */
class SignInJournalListener {

  private final AccessJournal journal;

  SignInJournalListener(AccessJournal journal) {
    this.journal = journal;
  }

  @EventListener
  void note(InteractiveAuthenticationSuccessEvent event) {
    if (event.getAuthentication() instanceof CallerAuthentication known) {
      Caller caller = known.getPrincipal();
      journal.write(
          AccessEntry.Kind.SIGNED_IN,
          AccessEntry.About.key(caller.name(), caller.keyId(), "signed in to the pages"));
    }
  }
}
