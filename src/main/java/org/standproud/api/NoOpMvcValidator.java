package org.standproud.api;

import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import org.springframework.validation.Validator;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Requests are read by readers that tell every problem at once, and nothing is validated by
 * annotations, so no framework for those is set up at the start.
 */
@Component
class NoOpMvcValidator implements WebMvcConfigurer, Validator {

  @Override
  public Validator getValidator() {
    return this;
  }

  @Override
  public boolean supports(Class<?> type) {
    return false;
  }

  @Override
  public void validate(Object target, Errors errors) {
    throw new IllegalStateException("nothing is supported");
  }
}
