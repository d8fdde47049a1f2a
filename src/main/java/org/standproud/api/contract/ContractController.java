package org.standproud.api.contract;

import java.io.IOException;
import java.io.InputStream;
import java.util.function.Supplier;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.function.SingletonSupplier;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Serves the contract, {@code api-docs/openapi.yaml}, which the build generates and packs. */
@RestController
class ContractController {

  private static final ClassPathResource CONTRACT = new ClassPathResource("contract/openapi.yaml");

  /** The type that springdoc and other OpenAPI tools send. */
  private static final MediaType YAML = MediaType.valueOf("application/vnd.oai.openapi");

  private final Supplier<byte[]> yaml = SingletonSupplier.of(ContractController::yaml);
  private final Supplier<byte[]> json = SingletonSupplier.of(() -> json(yaml()));

  @GetMapping("/v3/api-docs.yaml")
  ResponseEntity<byte[]> asYaml() {
    return ResponseEntity.ok().contentType(YAML).body(yaml.get());
  }

  @GetMapping("/v3/api-docs")
  ResponseEntity<byte[]> asJson() {
    return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(json.get());
  }

  private static byte[] yaml() {
    try (InputStream text = CONTRACT.getInputStream()) {
      return text.readAllBytes();
    } catch (IOException e) {
      throw new IllegalStateException("the contract is not in the program", e);
    }
  }

  private static byte[] json(byte[] yaml) {
    return JsonMapper.shared().writeValueAsBytes(YAMLMapper.builder().build().readTree(yaml));
  }
}
