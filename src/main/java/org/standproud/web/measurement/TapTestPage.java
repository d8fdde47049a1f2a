package org.standproud.web.measurement;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Listens to a tapped plate and shows its note and how it dies away. */
@Controller
class TapTestPage {

  @GetMapping("/tap-test")
  String show() {
    return "tap-test";
  }
}
