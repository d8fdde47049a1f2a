package org.standproud.advice.job;

import com.fasterxml.jackson.annotation.JsonIgnore;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Verdict;
import org.standproud.setup.Setup;
import tools.jackson.databind.JsonNode;

/**
 * One pass of a route, in the caller's units, judged as it stands.
 *
 * @param number its number in the whole route, from 1
 * @param face the face that is milled
 * @param stage rough or finish
 * @param part which strip or half of the face, from 1
 * @param parts into how many strips or halves the face is divided
 * @param takes what it takes off the face
 * @param before the piece before it
 * @param after the piece after it; smaller once every part of the face is milled
 * @param axialDepth a_p
 * @param offset cutter axis from the middle of the stock across the jaws, positive toward the fixed
 *     jaw
 * @param feed which way the cutter moves along the jaws
 * @param mode climb, conventional or both; absent if not known
 * @param spindleSpeed n
 * @param feedPerTooth f_z
 * @param tableFeed v_f
 * @param verdict its verdict
 * @param chance share of the draws that hold, 0 to 1; absent if it could not be computed
 * @param score its score
 * @param summary the verdict in one sentence with the deciding finding
 * @param findings ids of its stops and cautions, most severe first
 * @param first the message of its first finding; absent if there is none
 * @param firstCentimetre what to hear, see and feel in the first centimetre, and when to stop
 * @param minutes likely time in the cut
 * @param setup the whole set-up, as it can be sent to be assessed and recorded
 * @param held the same set-up; not serialized
 */
public record RoutePass(
    int number,
    String face,
    String stage,
    int part,
    int parts,
    Quantity takes,
    PieceSize before,
    PieceSize after,
    Quantity axialDepth,
    Quantity offset,
    String feed,
    @Nullable String mode,
    Quantity spindleSpeed,
    Quantity feedPerTooth,
    Quantity tableFeed,
    Verdict verdict,
    @Nullable Double chance,
    int score,
    String summary,
    List<String> findings,
    @Nullable String first,
    FirstCentimetre firstCentimetre,
    double minutes,
    @Schema(implementation = Object.class, ref = "#/components/schemas/Setup") JsonNode setup,
    @JsonIgnore Setup held) {

  /** Copies the list. */
  public RoutePass {
    findings = List.copyOf(findings);
  }
}
