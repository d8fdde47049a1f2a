package org.standproud.api;

import org.springframework.core.convert.converter.Converter;
import org.springframework.core.convert.converter.ConverterFactory;
import org.springframework.stereotype.Component;
import org.standproud.setup.Worded;

/** Converts parameters to enums by the words used everywhere else in the contract. */
@Component
class ChoicesAsWords implements ConverterFactory<String, Worded> {

  @Override
  public <T extends Worded> Converter<String, T> getConverter(Class<T> type) {
    return text -> {
      for (T choice : type.getEnumConstants()) {
        if (choice.words().equals(text)) {
          return choice;
        }
      }
      throw new IllegalArgumentException(text + " is none of the words");
    };
  }
}
