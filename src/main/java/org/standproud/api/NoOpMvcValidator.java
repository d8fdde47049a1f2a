package org.standproud.api;

import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import org.springframework.validation.Validator;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Requests are checked by readers that report every problem at once. Nothing is validated by
 * annotations, so no validation framework is started.
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
    throw new IllegalStateException("this validator supports no type");
  }
}
