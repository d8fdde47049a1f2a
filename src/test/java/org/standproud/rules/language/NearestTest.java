package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edits counted by hand: one inserted, left out or exchanged character each. */
class NearestTest {

  private static final List<String> NAMES =
      List.of("stick-out", "grip depth", "slip margin", "stop", "clamping force of the vise");

  @ParameterizedTest
  @CsvSource({
    "stick-out, stick-out", // none
    "stickout, stick-out", // one
    "grib dept, grip depth", // two
    "grib depht, grip depth", // three of ten, which is as many as are allowed
    "grxx dexth, grip depth", // three of ten
    "grxx dexxh,", // four of ten
    "stxx, stop", // two of four, two are allowed
    "xxxp,", // three of four
    "clamp, clamping force of the vise", // what a name begins with
    "cl,", // too little to go by
    "sti, stop", // nearer by edits than by its beginning
    "slip, stop", // two edits
    "'',",
    "'   ',",
  })
  void aNameIsNearByEditsOrByItsBeginning(String wrong, String nearest) {
    assertThat(Nearest.of(wrong, NAMES)).isEqualTo(nearest);
  }

  @ParameterizedTest
  @CsvSource({"ab, aa", "ba, aa"})
  void ofTwoEquallyNearTheFirstByTheAlphabetIsReturned(String wrong, String nearest) {
    assertThat(Nearest.of(wrong, List.of("bb", "aa"))).isEqualTo(nearest);
  }
}
