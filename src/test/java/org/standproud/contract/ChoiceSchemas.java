package org.standproud.contract;

import com.fasterxml.jackson.databind.JavaType;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.media.Schema;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.standproud.setup.Worded;

/** Describes an enum in the contract by its words. */
@Component
class ChoiceSchemas implements ModelConverter {

  @Override
  public @Nullable Schema<?> resolve(
      AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
    JavaType java = Json31.mapper().constructType(type.getType());
    if (java != null && Worded.class.isAssignableFrom(java.getRawClass()) && java.isEnumType()) {
      Schema<Object> words = RequestSchema.typed("string");
      for (Object choice : java.getRawClass().getEnumConstants()) {
        words.addEnumItemObject(((Worded) choice).words());
      }
      return words;
    }
    return chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
  }
}
