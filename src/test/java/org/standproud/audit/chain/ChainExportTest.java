package org.standproud.audit.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.audit.SampleRecords;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.chain.ChainFault.Kind;
import tools.jackson.databind.json.JsonMapper;

/** What a forger without the key can do to an exported chain, and how it is found. */
@IntegrationTest
class ChainExportTest {

  private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
  private static final int RECORDS = 10;
  private static final ChainKey KEY = ChainKey.of(ChainKey.fresh());
  private static final SigningKey SIGNING = SigningKey.of(SigningKey.fresh());
  private static final List<String> WHOLE = export(KEY, RECORDS);

  private @TempDir Path directory;
  private List<String> lines;

  @BeforeEach
  void beginWithAWholeExport() {
    lines = new ArrayList<>(WHOLE);
  }

  @Test
  void anUntouchedExportIsWhole() throws IOException {
    ChainReport report = check(List.of());

    assertThat(report).isEqualTo(new ChainReport(RECORDS, RECORDS, List.of()));
    assertThat(report.whole()).isTrue();
  }

  @Test
  void anExportOfNoRecordsIsWhole() throws IOException {
    lines = export(KEY, 0);

    assertThat(check(List.of()).whole()).isTrue();
  }

  @Test
  void anEditedAnswerIsLocated() throws IOException {
    lines.set(4, lines.get(4).replace("do not run", "run"));

    assertThat(places(check(List.of()))).containsExactly("EDITED 5");
  }

  @Test
  void aSealMadeUpForAnEditedRecordIsLocated() throws IOException {
    ChainKey own = ChainKey.of(ChainKey.fresh());
    Link fifth = link(4);
    lines.set(4, ChainExport.line(own.seal(5, fifth.previous(), edited(fifth).body())));

    assertThat(places(check(List.of()))).containsExactly("EDITED 5");
  }

  @Test
  void theLastRecordEditedIsLocated() throws IOException {
    lines.set(9, lines.get(9).replace("do not run", "run"));

    assertThat(places(check(List.of()))).containsExactly("EDITED 10");
  }

  @Test
  void whiteSpaceAndTheOrderOfMembersAreNoEdit() throws IOException {
    lines.set(4, lines.get(4).replace("\":", "\" : "));

    assertThat(check(List.of()).whole()).isTrue();
  }

  @Test
  void deletedRecordsAreLocated() throws IOException {
    lines.subList(2, 4).clear();

    assertThat(places(check(List.of()))).containsExactly("DELETED 3-4");
  }

  @Test
  void theFirstRecordDeletedIsLocated() throws IOException {
    lines.remove(0);

    assertThat(places(check(List.of()))).containsExactly("DELETED 1");
  }

  @Test
  void recordsInAnotherOrderAreLocated() throws IOException {
    Collections.swap(lines, 2, 3);

    assertThat(places(check(List.of()))).containsExactly("REORDERED 3");
  }

  @Test
  void recordsThatSwappedTheirNumbersAreLocated() throws IOException {
    Link third = link(2);
    Link fourth = link(3);
    lines.set(2, ChainExport.line(numbered(3, fourth)));
    lines.set(3, ChainExport.line(numbered(4, third)));

    assertThat(places(check(List.of()))).containsExactlyInAnyOrder("REORDERED 3", "REORDERED 4");
  }

  @Test
  void aRecordPutInIsLocated() throws IOException {
    lines.add(5, ChainExport.line(edited(link(4))));

    assertThat(places(check(List.of()))).containsExactly("INSERTED 5");
  }

  @Test
  void aRecordPutInTwiceIsLocated() throws IOException {
    lines.add(7, lines.get(4));

    assertThat(places(check(List.of()))).containsExactly("INSERTED 5");
  }

  @Test
  void aRecordPutInAtTheEndIsLocated() throws IOException {
    lines.add(10, ChainExport.line(numbered(11, edited(link(9)))));

    assertThat(places(check(List.of()))).containsExactly("INSERTED 11");
  }

  @Test
  void recordsCutFromTheEndAreMissedByTheClosingCheckpoint() throws IOException {
    lines.subList(7, 10).clear();

    assertThat(places(check(List.of()))).containsExactly("TRUNCATED 8-10");
  }

  @Test
  void aFileCutShortLacksItsClosingCheckpoint() throws IOException {
    lines.subList(7, 11).clear();

    assertThat(places(check(List.of()))).containsExactly("TRUNCATED 0");
  }

  @Test
  void aCheckpointKeptElsewhereMissesWhatAnEarlierExportDidNotHold() throws IOException {
    Checkpoint later = SIGNING.sign(12, "ab".repeat(32), "cd".repeat(32), KEY.id(), SEVEN);

    assertThat(places(check(List.of(later)))).containsExactly("TRUNCATED 11-12");
  }

  @Test
  void aChainCutAndContinuedIsCaughtByACheckpointOfTheOldOne() throws IOException {
    Link ninth = link(8);
    Link tenth = KEY.seal(10, ninth.seal(), edited(link(9)).body());
    lines.set(9, ChainExport.line(tenth));
    lines.set(10, ChainExport.line(closing(10, tenth.seal(), digest(lines))));
    Checkpoint before = closing(10, link(WHOLE.get(9)).seal(), digest(WHOLE));

    assertThat(check(List.of()).whole()).as("without the outside checkpoint").isTrue();
    assertThat(checkInPublic(List.of()).whole()).as("without the outside checkpoint").isTrue();
    assertThat(places(check(List.of(before)))).isNotEmpty().allMatch("REWRITTEN 10"::equals);
    assertThat(places(checkInPublic(List.of(before)))).contains("REWRITTEN 10");
  }

  @Test
  void aForgedCheckpointIsNotBelieved() throws IOException {
    Checkpoint true12 = SIGNING.sign(12, "ab".repeat(32), "cd".repeat(32), KEY.id(), SEVEN);
    Checkpoint forged =
        new Checkpoint(
            10,
            true12.seal(),
            true12.digest(),
            true12.time(),
            true12.chainKey(),
            true12.keyId(),
            true12.signature());

    assertThat(places(check(List.of(forged)))).containsExactly("CHECKPOINT_FORGED 10");
    assertThat(places(checkInPublic(List.of(forged)))).containsExactly("CHECKPOINT_FORGED 10");
  }

  @Test
  void theHolderOfTheChainKeyAloneCannotMakeACheckpoint() throws IOException {
    SigningKey own = SigningKey.of(SigningKey.fresh());
    lines.set(10, ChainExport.line(own.sign(10, link(9).seal(), digest(lines), KEY.id(), SEVEN)));

    assertThat(places(check(List.of()))).containsExactly("CHECKPOINT_OF_OTHER_KEY 10");
    assertThat(places(checkInPublic(List.of())))
        .containsExactly("CHECKPOINT_OF_OTHER_KEY 10", "UNPROVED 1-10");
  }

  @Test
  void withThePublicKeyAloneAnUntouchedExportIsWhole() throws IOException {
    assertThat(checkInPublic(List.of())).isEqualTo(new ChainReport(RECORDS, RECORDS, List.of()));
    lines = export(KEY, 0);
    assertThat(checkInPublic(List.of()).whole()).isTrue();
  }

  @Test
  void withThePublicKeyAloneAnEditIsLocatedBetweenTwoCheckpoints() throws IOException {
    Checkpoint fourth = closing(4, link(3).seal(), digest(WHOLE.subList(0, 4)));
    lines.set(5, lines.get(5).replace("do not run", "run"));

    assertThat(places(checkInPublic(List.of(fourth)))).containsExactly("EDITED 5-10");
  }

  @Test
  void withThePublicKeyAloneDeletedMovedAndAddedRecordsAreFound() throws IOException {
    lines.subList(2, 4).clear();
    assertThat(places(checkInPublic(List.of()))).contains("DELETED 3-4");

    lines = new ArrayList<>(WHOLE);
    Collections.swap(lines, 2, 3);
    assertThat(places(checkInPublic(List.of()))).contains("DELETED 3", "REORDERED 3");

    lines = new ArrayList<>(WHOLE);
    lines.add(5, ChainExport.line(edited(link(4))));
    assertThat(places(checkInPublic(List.of()))).contains("REORDERED 5");

    lines = new ArrayList<>(WHOLE);
    lines.subList(7, 10).clear();
    assertThat(places(checkInPublic(List.of()))).containsExactly("TRUNCATED 8-10");

    lines = new ArrayList<>(WHOLE);
    lines.remove(10);
    assertThat(places(checkInPublic(List.of()))).containsExactly("TRUNCATED 0", "UNPROVED 1-10");
  }

  @Test
  void aTextTakenAwayWithoutARecordThatSaysSoIsFound() throws IOException {
    Link fifth = link(4);
    Remainder left = new Remainder(fifth.digest(), CanonicalJson.parse("\"withheld\""));
    lines.set(4, ChainExport.line(new Link(5, fifth.previous(), fifth.seal(), null, left)));

    assertThat(places(check(List.of()))).containsExactly("WITHHELD_SILENTLY 5");
    assertThat(places(checkInPublic(List.of()))).containsExactly("WITHHELD_SILENTLY 5");
  }

  @Test
  void aLineThatIsNoRecordIsLocatedByLineNumber() throws IOException {
    lines.add(3, "{\"sequence\":4,\"sequence\":5}");

    assertThat(places(check(List.of()))).containsExactly("UNREADABLE 4");
  }

  @Test
  void aCheckWithAnotherKeySaysSoInsteadOfCallingEveryRecordEdited() throws IOException {
    Path file = Files.write(directory.resolve("export.ndjson"), lines);
    ChainVerifier other =
        new ChainVerifier(ChainKey.of(ChainKey.fresh()), List.of(SIGNING.verifying()));
    ChainReport report = ChainExport.verify(file, other, List.of());

    assertThat(places(report)).containsExactly("WRONG_KEY 0");
  }

  @Property(tries = 200)
  void anyOneChangedCharacterOfARecordIsFoundAtThatRecord(
      @ForAll @IntRange(min = 0, max = RECORDS - 1) int row, @ForAll @IntRange(min = 0) int where)
      throws IOException {
    String line = WHOLE.get(row);
    int at = where % line.length();
    char other = line.charAt(at) == '7' ? '8' : '7';
    List<String> changed = new ArrayList<>(WHOLE);
    changed.set(row, line.substring(0, at) + other + line.substring(at + 1));
    Path file = Files.createTempFile("export", ".ndjson");
    try {
      ChainReport report = ChainExport.verify(Files.write(file, changed), withKey(), List.of());

      assertThat(ChainExport.verify(file, inPublic(), List.of()).whole()).isFalse();
      assertThat(report.intact()).isEqualTo(RECORDS - 1);
      assertThat(report.faults())
          .anyMatch(
              f ->
                  f.first() <= row + 1 && row + 1 <= f.last() && f.kind() != Kind.TRUNCATED
                      || f.kind() == Kind.TRUNCATED && row == RECORDS - 1);
    } finally {
      Files.delete(file);
    }
  }

  private ChainReport check(List<Checkpoint> outside) throws IOException {
    return check(withKey(), outside);
  }

  private ChainReport checkInPublic(List<Checkpoint> outside) throws IOException {
    return check(inPublic(), outside);
  }

  private ChainReport check(ChainCheck check, List<Checkpoint> outside) throws IOException {
    Path place = directory.resolve("checkpoints.ndjson");
    Files.deleteIfExists(place);
    CheckpointFile checkpoints = new CheckpointFile(place);
    outside.forEach(checkpoints::append);
    Path file = Files.write(directory.resolve("export.ndjson"), lines);
    return ChainExport.verify(file, check, checkpoints.lines());
  }

  private static ChainCheck withKey() {
    return new ChainVerifier(KEY, List.of(SIGNING.verifying()));
  }

  private static ChainCheck inPublic() {
    return new PublicCheck(List.of(SIGNING.verifying()));
  }

  private static Checkpoint closing(long place, String seal, String digest) {
    return SIGNING.sign(place, seal, digest, KEY.id(), SEVEN);
  }

  private static String digest(List<String> lines) {
    String digest = ChainDigest.START;
    for (String line : lines) {
      if (!line.startsWith("{\"checkpoint\"")) {
        digest = ChainDigest.after(digest, link(line));
      }
    }
    return digest;
  }

  private static List<String> export(ChainKey key, int records) {
    List<String> lines = new ArrayList<>();
    String previous = ChainKey.GENESIS;
    for (int place = 1; place <= records; place++) {
      Link link = key.seal(place, previous, SampleRecords.stopped("J-" + place, SEVEN).body());
      previous = link.seal();
      lines.add(ChainExport.line(link));
    }
    lines.add(ChainExport.line(SIGNING.sign(records, previous, digest(lines), key.id(), SEVEN)));
    return lines;
  }

  private Link link(int index) {
    return link(lines.get(index));
  }

  private static Link link(String line) {
    return JsonMapper.shared().readValue(line, Link.class);
  }

  private static Link edited(Link link) {
    String body = link.body().text().replace("do not run", "run");
    return new Link(link.sequence(), link.previous(), link.seal(), new CanonicalJson(body));
  }

  private static Link numbered(long place, Link link) {
    return new Link(place, link.previous(), link.seal(), link.body());
  }

  private static List<String> places(ChainReport report) {
    return report.faults().stream()
        .map(f -> f.kind() + " " + f.first() + (f.first() == f.last() ? "" : "-" + f.last()))
        .toList();
  }
}
