package org.standproud.contract;

import java.nio.file.Path;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.standproud.Standproud;
import org.standproud.api.RunningService;

/** The contract as springdoc and the classes beside this one make it from the service's code. */
final class GeneratedContract {

  private static final String PATH = "/v3/generated";

  private GeneratedContract() {}

  /**
   * Starts a service with springdoc and returns its contract as YAML.
   *
   * @param records an empty folder
   */
  static String yaml(Path records) {
    try (ConfigurableApplicationContext context =
        new SpringApplicationBuilder(Standproud.class, Contract.class, ChoiceSchemas.class)
            .run(
                "--server.port=0",
                "--logging.level.root=WARN",
                "--spring.main.banner-mode=off",
                "--standproud.audit.directory=" + records,
                "--springdoc.api-docs.enabled=true",
                "--springdoc.api-docs.path=" + PATH,
                "--springdoc.api-docs.version=openapi_3_1",
                "--springdoc.paths-to-match=/v1/**",
                "--springdoc.writer-with-order-by-keys=true",
                "--springdoc.default-flat-param-object=true",
                "--springdoc.default-produces-media-type=application/json")) {
      int port = ((WebServerApplicationContext) context).getWebServer().getPort();
      return new RunningService.Caller(port).get(PATH + ".yaml").body();
    }
  }
}
