package org.standproud.advice.everyday;

import com.github.luben.zstd.ZstdDictTrainer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.advice.DemoShop;
import org.standproud.assessment.Assessor;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;

/**
 * Trains a dictionary for records on the everyday set-ups, not on the demonstration set-ups that
 * its use is measured with. A plain main; arguments: the file to write, its kilobytes. A released
 * dictionary never changes: a better one gets the next number beside it.
 */
final class RecordDictionary {

  private static final int KILOBYTE = 1024;
  private static final int MOST_SAMPLES_BYTES = 80 * KILOBYTE * KILOBYTE;
  private static final int LEVEL = 3;

  /** What is found once in 315 set-ups is to be in the dictionary too. */
  private static final int WEIGHT_OF_A_FINDING = 8;

  private RecordDictionary() {}

  /** Trains it. */
  public static void main(String... arguments) throws IOException, InterruptedException {
    Path file = Path.of(arguments[0]);
    int bytes = Integer.parseInt(arguments[1]) * KILOBYTE;
    ZstdDictTrainer trainer = new ZstdDictTrainer(MOST_SAMPLES_BYTES, bytes, LEVEL);
    List<AuditRecord> records = new ArrayList<>();
    Assessor assessor =
        new Assessor(
            () -> DemoShop.CATALOGUE,
            () -> DemoShop.CARDS,
            job -> List.of(),
            (record, numbers) -> records.add(record),
            "0.5.0",
            Clock.systemUTC());
    for (EverydaySetup row : EverydayTable.rows()) {
      assessor.assess(row.request().toString(), "dictionary");
    }
    Map<String, String> findings = new TreeMap<>();
    for (AuditRecord record : records) {
      trainer.addSample(record.body().utf8());
      for (JsonNode finding : record.account().answer().tree().path("findings")) {
        findings.putIfAbsent(
            finding.path("card").asString() + finding.path("kind").asString(),
            CanonicalJson.of(finding).text());
      }
    }
    for (int i = 0; i < WEIGHT_OF_A_FINDING; i++) {
      findings.values().forEach(f -> trainer.addSample(f.getBytes(StandardCharsets.UTF_8)));
    }
    Files.write(file, trainer.trainSamples());
  }
}
