package org.standproud.assessment;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Finding;
import org.standproud.assessment.acceptance.ShownAcceptance;

/**
 * A finding, and what people decided about it. A decision changes neither the finding nor the
 * verdict.
 *
 * @param finding what the card has to say
 * @param acceptances who answers for going on in spite of it; absent when nobody does
 */
@Schema(name = "Finding")
public record FindingDocument(
    @JsonUnwrapped Finding finding, @Nullable List<ShownAcceptance> acceptances) {}
