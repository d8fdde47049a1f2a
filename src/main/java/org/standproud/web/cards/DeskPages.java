package org.standproud.web.cards;

import java.security.Principal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.publishing.CardEdit;
import org.standproud.rules.publishing.Proposal;
import org.standproud.rules.publishing.RevisionDiff;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.rules.publishing.StoredRevision;
import org.standproud.shop.impact.ImpactJob;
import org.standproud.shop.impact.ImpactJobs;

/** Pages of pending proposals, published revisions and impact on past jobs. */
@Controller
class DeskPages {

  private final RuleBasePublisher desk;
  private final ImpactJobs impacts;

  DeskPages(RuleBasePublisher desk, ImpactJobs impacts) {
    this.desk = desk;
    this.impacts = impacts;
  }

  @GetMapping("/rules/proposals")
  String proposals(Model model) {
    model.addAttribute("proposals", desk.proposals());
    return "proposals";
  }

  @GetMapping("/rules/proposals/{id}")
  ModelAndView proposal(@PathVariable String id, Principal caller) {
    return proposalPage(waiting(id), caller, null);
  }

  @PostMapping("/rules/proposals/{id}/publication")
  ModelAndView publish(
      @PathVariable String id,
      @RequestParam(defaultValue = "") String author,
      @RequestParam(defaultValue = "") String reason,
      Principal caller) {
    Proposal proposal = waiting(id);
    String publisher = Author.of(caller, author);
    if (publisher.isEmpty()) {
      return PublishRedirect.refused(proposalPage(proposal, caller, "Enter your name."));
    }
    return PublishRedirect.of(
        desk.publish(id, publisher, reason, Impact.Progress.UNWATCHED),
        message -> proposalPage(proposal, caller, message));
  }

  @PostMapping("/rules/proposals/{id}/withdrawal")
  ModelAndView withdraw(@PathVariable String id) {
    desk.withdraw(waiting(id).id());
    return PublishRedirect.seeOther("/rules/proposals");
  }

  @PostMapping("/rules/proposals/{id}/impact")
  ModelAndView impact(@PathVariable String id) {
    Proposal proposal = waiting(id);
    CardEdit edit = CardEdit.between(desk.files(), proposal.files());
    return PublishRedirect.seeOther(
        "/rules/impacts/" + impacts.start(edit, proposal.proposer()).id());
  }

  @GetMapping("/rules/impacts/{id}")
  ModelAndView impact(
      @PathVariable UUID id,
      @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace) {
    ModelAndView page = new ModelAndView(inPlace ? "impact :: progress" : "impact");
    page.addObject("impact", job(id).account());
    return page;
  }

  @PostMapping("/rules/impacts/{id}/end")
  ModelAndView end(@PathVariable UUID id) {
    job(id).cancel();
    return PublishRedirect.seeOther("/rules/impacts/" + id);
  }

  @GetMapping("/rules/history")
  String history(Model model) {
    List<StoredRevision> revisions = new ArrayList<>(desk.revisions());
    Collections.reverse(revisions);
    model.addAttribute("revisions", revisions);
    return "history";
  }

  @GetMapping("/rules/history/{id}")
  ModelAndView revision(@PathVariable String id, Principal caller) {
    return revisionPage(kept(id), caller, null);
  }

  @PostMapping("/rules/history/{id}/rollback")
  ModelAndView rollBack(
      @PathVariable String id,
      @RequestParam(defaultValue = "") String author,
      @RequestParam(defaultValue = "") String note,
      Principal caller) {
    StoredRevision revision = kept(id);
    String publisher = Author.of(caller, author);
    if (publisher.isEmpty() || note.isBlank()) {
      return PublishRedirect.refused(
          revisionPage(revision, caller, "Enter your name and the reason."));
    }
    return PublishRedirect.of(
        desk.rollBack(id, publisher, note.strip(), Impact.Progress.UNWATCHED),
        message -> revisionPage(revision, caller, message));
  }

  private ModelAndView proposalPage(Proposal proposal, Principal caller, @Nullable String message) {
    ModelAndView page = new ModelAndView("proposal");
    page.addObject("proposal", proposal);
    page.addObject("changes", desk.diff(desk.files(), proposal.files()));
    page.addObject("weakened", desk.weakened(proposal));
    page.addObject("known", Author.known(caller));
    page.addObject("message", message);
    return page;
  }

  private ModelAndView revisionPage(
      StoredRevision revision, Principal caller, @Nullable String message) {
    ModelAndView page = new ModelAndView("revision");
    page.addObject("kept", revision);
    page.addObject("changes", changes(revision));
    page.addObject("serves", desk.latest().map(l -> l.id().equals(revision.id())).orElse(false));
    page.addObject("known", Author.known(caller));
    page.addObject("message", message);
    return page;
  }

  private RevisionDiff changes(StoredRevision revision) {
    String parent = revision.revision().parent();
    Map<String, String> before = parent == null ? Map.of() : desk.files(parent).orElseGet(Map::of);
    return desk.diff(before, desk.files(revision.id()).orElseGet(Map::of));
  }

  private Proposal waiting(String id) {
    return desk.proposal(id)
        .orElseThrow(() -> new NotFoundException("No pending change has this id."));
  }

  private StoredRevision kept(String id) {
    return desk.revisions().stream()
        .filter(r -> r.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new NotFoundException("There is no such revision."));
  }

  private ImpactJob job(UUID id) {
    return impacts
        .find(id)
        .orElseThrow(() -> new NotFoundException("This check does not exist any more."));
  }
}
