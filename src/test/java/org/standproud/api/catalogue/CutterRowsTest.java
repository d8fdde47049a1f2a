package org.standproud.api.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ObjectNode;

/**
 * Headings of a table of cutters are read whatever stands about them, and however long they are.
 */
class CutterRowsTest {

  @Test
  void aUnitIsReadInEitherBracketWithBlanksAboutIt() {
    List<ObjectNode> rows =
        CutterRows.ofTable("name, DC [ mm ] ,APMX (mm),ZEFP\nend mill 10,10,22,4\n");
    assertThat(rows).hasSize(1);
    assertThat(rows.get(0).toString())
        .contains("\"name\":\"end mill 10\"")
        .contains("\"diameter\":{\"value\":10,\"unit\":\"mm\"}")
        .contains("\"teeth\":4");
  }

  /** Reading forth and back over blanks would take the cube of their number in steps. */
  @Test
  void aHeadingOfNothingButBlanksBehindABracketIsRefusedLikeAnyOther() {
    String heading = "DC [" + " ".repeat(200_000) + "x";
    assertThatThrownBy(() -> CutterRows.ofTable(heading + ",name\n10,a\n"))
        .hasMessageContaining("Unknown column \"DC [");
  }
}
