package org.standproud.assessment;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Finding;
import org.standproud.assessment.acceptance.ShownAcceptance;

/**
 * A finding with its acceptances, which change neither the finding nor the verdict.
 *
 * @param finding the finding of the card
 * @param acceptances who signed it off, for this job order; absent if not signed off. Acceptances
 *     change neither the finding nor the verdict.
 */
@Schema(name = "Finding")
public record FindingDocument(
    @JsonUnwrapped Finding finding, @Nullable List<ShownAcceptance> acceptances) {}
