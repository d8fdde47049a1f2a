package org.standproud.api.gate;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Prints two sentences, instead of a stack trace, when unsafe access settings stop the start. */
final class UnsafeAccessFailureAnalyzer extends AbstractFailureAnalyzer<UnsafeAccessException> {

  @Override
  protected FailureAnalysis analyze(Throwable root, UnsafeAccessException cause) {
    return new FailureAnalysis(String.valueOf(cause.getMessage()), cause.remedy(), cause);
  }
}
