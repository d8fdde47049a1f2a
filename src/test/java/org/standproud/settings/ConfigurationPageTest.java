package org.standproud.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.boot.env.YamlPropertySourceLoader;
import org.springframework.core.env.EnumerablePropertySource;
import org.springframework.core.env.PropertySource;
import org.springframework.core.io.ClassPathResource;
import org.standproud.GeneratedPages;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The page of all properties is what the annotation processor found in the code, with the defaults
 * of application.yaml.
 */
class ConfigurationPageTest {

  private static final Path PAGE = Path.of("api-docs/configuration.md");
  private static final String PREFIX = "standproud.";

  @Test
  void thePageShowsEveryPropertyWithItsDefault() throws IOException {
    String written = page(properties(), defaults());
    if (GeneratedPages.areWritten()) {
      Files.writeString(PAGE, written);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(written);
  }

  @Test
  void everyPropertyIsDescribedAndEveryDefaultIsOfAProperty() throws IOException {
    Map<String, JsonNode> properties = properties();
    assertThat(properties).hasSizeGreaterThan(30);
    properties.forEach(
        (name, property) ->
            assertThat(property.path("description").asString("")).as(name).isNotBlank());
    Set<String> withDefault = new TreeSet<>(defaults().keySet());
    withDefault.removeAll(properties.keySet());
    assertThat(withDefault).isEmpty();
  }

  private static String page(Map<String, JsonNode> properties, Map<String, String> defaults) {
    StringBuilder page = new StringBuilder();
    page.append("# Properties\n\n")
        .append("Made from the code by `ConfigurationPageTest` (`mvn -Pregenerate verify`). Give a")
        .append(" property on the command line (`--standproud.access=keys`), in `application.yaml`")
        .append(" in the working directory, or as a variable of the environment")
        .append(" (`STANDPROUD_RULES_TWOPERSONS=true`). A property that does not exist, or a value")
        .append(" that is not allowed, stops the start with a sentence that names it. Those of")
        .append(" Spring Boot (`server.*`, `spring.*`, `management.*`) are described in its")
        .append(" reference.\n\n")
        .append("| property | type | default | meaning |\n|---|---|---|---|\n");
    properties.forEach(
        (name, property) ->
            page.append("| `")
                .append(name)
                .append("` | ")
                .append(type(property))
                .append(" | ")
                .append(shown(defaults.get(name)))
                .append(" | ")
                .append(property.path("description").asString(""))
                .append(" |\n"));
    return page.toString();
  }

  private static String type(JsonNode property) {
    return property
        .path("type")
        .asString("")
        .replaceAll("[A-Za-z.]+[.$]([A-Za-z]+)", "$1")
        .replace("<", " of ")
        .replace(">", "");
  }

  private static String shown(String value) {
    return value == null || value.isEmpty() ? "" : "`" + value + "`";
  }

  private static Map<String, JsonNode> properties() throws IOException {
    Map<String, JsonNode> properties = new TreeMap<>();
    ClassLoader loader = ConfigurationPageTest.class.getClassLoader();
    for (URL url :
        Collections.list(loader.getResources("META-INF/spring-configuration-metadata.json"))) {
      try (InputStream in = url.openStream()) {
        for (JsonNode property : JsonMapper.shared().readTree(in).path("properties")) {
          String name = property.get("name").stringValue();
          if (name.startsWith(PREFIX)) {
            properties.put(name, property);
          }
        }
      }
    }
    return properties;
  }

  private static Map<String, String> defaults() throws IOException {
    Map<String, String> defaults = new TreeMap<>();
    for (PropertySource<?> source :
        new YamlPropertySourceLoader()
            .load("defaults", new ClassPathResource("application.yaml"))) {
      for (String name : ((EnumerablePropertySource<?>) source).getPropertyNames()) {
        if (name.startsWith(PREFIX)) {
          defaults.put(name, String.valueOf(source.getProperty(name)));
        }
      }
    }
    return defaults;
  }
}
