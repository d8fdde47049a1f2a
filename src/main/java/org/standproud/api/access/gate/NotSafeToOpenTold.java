package org.standproud.api.access.gate;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Tells in two sentences, instead of a stack trace, why the service does not start. */
final class NotSafeToOpenTold extends AbstractFailureAnalyzer<NotSafeToOpen> {

  @Override
  protected FailureAnalysis analyze(Throwable root, NotSafeToOpen cause) {
    return new FailureAnalysis(String.valueOf(cause.getMessage()), cause.remedy(), cause);
  }
}
