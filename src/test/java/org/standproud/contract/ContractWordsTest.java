package org.standproud.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.standproud.GeneratedPages;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The descriptions in the contract are the javadoc of the records that answers are made of. */
class ContractWordsTest {

  private static final Path WORDS = Contract.FOLDER.resolve("words.yaml");
  private static final String HEADER =
      """
      # Descriptions of the schemas and fields of answers in the contract, from the javadoc of their records:
      # mvn -Pregenerate verify. For a new schema, add its name with {} first.
      # The key "" describes the schema; a question mark marks a field that is left out when it has no value.
      """;

  @Test
  void theWordsOfTheContractAreThoseOfTheJavadoc() throws IOException {
    String now = words();
    if (GeneratedPages.areWritten()) {
      Files.writeString(WORDS, now);
    }
    assertThat(Files.readString(WORDS)).isEqualTo(now);
  }

  @Test
  void everySchemaAndFieldHasWords() throws IOException {
    schemas()
        .forEach((schema, fields) -> assertThat(fields.values()).as(schema).doesNotContain(""));
  }

  private static String words() throws IOException {
    ContractJavadoc javadoc = ContractJavadoc.read(Path.of("src/main/java"));
    StringBuilder text = new StringBuilder(HEADER);
    schemas()
        .forEach(
            (schema, known) -> {
              text.append(schema).append(":\n");
              javadoc
                  .words(schema, Set.copyOf(known.keySet()))
                  .forEach((field, words) -> text.append(line(field, words)));
            });
    return text.toString();
  }

  private static String line(String field, String words) {
    String key = field.isEmpty() ? "\"\"" : field;
    return "  " + key + ": " + JsonMapper.shared().writeValueAsString(words) + "\n";
  }

  private static Map<String, Map<String, String>> schemas() throws IOException {
    return YAMLMapper.builder()
        .build()
        .readValue(
            Files.readString(WORDS), new TypeReference<Map<String, Map<String, String>>>() {});
  }
}
