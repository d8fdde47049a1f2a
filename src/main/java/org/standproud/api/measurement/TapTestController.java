package org.standproud.api.measurement;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.assessment.taptest.TapTestReport;

/** Reads a recording of taps on a clamped plate. Nothing is kept. */
@Tag(name = "Measurements")
@RestController
@RequestMapping(path = "/v1/tap-tests", produces = MediaType.APPLICATION_JSON_VALUE)
class TapTestController {

  /** Ten seconds of stereo at 48,000 samples a second and 16 bits. */
  private static final int MOST_BYTES = 2 * 1024 * 1024;

  private final RequestBodies bodies;

  TapTestController(RequestBodies bodies) {
    this.bodies = bodies;
  }

  @Operation(
      operationId = "analyseTapTest",
      summary = "Find note and damping in a recording of taps",
      description =
          "Tap the end of the top edge of the clamped plate a few times, a second apart, and send"
              + " the sound as a WAV file. The strongest note in the range and the way it dies away"
              + " come back as they go into /hold/measuredNote and /hold/measuredDamping of a set-up."
              + " Nothing is kept.",
      requestBody =
          @RequestBody(
              required = true,
              description = "A WAV file of at most 2 MiB.",
              content =
                  @Content(
                      mediaType = "audio/wav",
                      schema = @Schema(type = "string", format = "binary"))))
  @ApiResponse(
      responseCode = "200",
      description = "Note and damping, each with two standard errors to either side.",
      content = @Content(schema = @Schema(implementation = TapTestReport.class)))
  @PostMapping(consumes = {"audio/wav", "audio/x-wav", "audio/wave", "audio/vnd.wave"})
  TapTestReport analyse(
      @Parameter(
              description = "lowest note looked for, Hz",
              schema = @Schema(type = "number", minimum = "5", defaultValue = "80"))
          @RequestParam(defaultValue = "80")
          double lowest,
      @Parameter(
              description = "highest note looked for, Hz, at most 0.45 of the sampling rate",
              schema = @Schema(type = "number", defaultValue = "8000"))
          @RequestParam(defaultValue = "8000")
          double highest,
      HttpServletRequest request)
      throws IOException {
    return TapTestReport.of(bodies.bytes(request, MOST_BYTES), lowest, highest);
  }
}
