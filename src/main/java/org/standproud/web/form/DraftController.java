package org.standproud.web.form;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.setup.UnitSystem;
import org.standproud.web.form.Handle.Dragged;
import org.standproud.web.form.Handle.Steps;
import org.standproud.web.form.SetupPage.Filled;

/**
 * Judges the set-up form as a draft whenever it changes, and returns the parts of the page to
 * replace. Nothing is recorded.
 */
@Controller
class DraftController {

  private final SetupPage page;

  DraftController(SetupPage page) {
    this.page = page;
  }

  @PostMapping("/draft")
  ModelAndView typed(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before) {
    return page.changed(SetupController.filled(values, units, before), null);
  }

  @PostMapping(path = "/draft", params = "step")
  ModelAndView stepped(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      @RequestParam String step) {
    Steps steps = Steps.of(step);
    UnitSystem own = SetupController.filled(values, units, before).units();
    Map<String, String> after = Handle.stepped(values, own, steps);
    return page.changed(new Filled(own, after, before), steps.path());
  }

  @PostMapping(path = "/draft", params = "drag")
  ModelAndView dragged(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      @RequestParam String drag,
      @RequestParam String from,
      @RequestParam double by) {
    UnitSystem own = SetupController.filled(values, units, before).units();
    Map<String, String> after = Handle.dragged(values, own, new Dragged(drag, from, by));
    return page.changed(new Filled(own, after, before), drag);
  }
}
