package org.standproud.audit.records;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.settings.SettingRefused;

/**
 * Location of records and their keys.
 *
 * @param directory holds the database, the chain key (chain.key) and the key that signs checkpoints
 *     (checkpoint.key, its public half in checkpoint.key.pub)
 * @param checkpoints the file of checkpoints, which protects only as far as it is out of reach: put
 *     it where the owner of the database cannot write, or copy it there
 * @param mostExports concurrent exports and checks of the chain, at each replica; 0 refuses them
 * @param chainKey the chain key, for several services on one database; else the file holds it
 * @param signingKey the key that signs checkpoints, for several services on one database; else the
 *     file holds it
 */
@ConfigurationProperties("standproud.audit")
public record AuditProperties(
    Path directory,
    Path checkpoints,
    int mostExports,
    @Nullable String chainKey,
    @Nullable String signingKey) {

  /** Checks the values. */
  public AuditProperties {
    SettingRefused.given("standproud.audit.directory", directory, "A folder is required.");
    SettingRefused.given("standproud.audit.checkpoints", checkpoints, "A file is required.");
    SettingRefused.range("standproud.audit.most-exports", mostExports, 0, Integer.MAX_VALUE);
  }

  /** Prints the properties without secrets. */
  @Override
  public String toString() {
    return "AuditProperties[" + directory + ", " + checkpoints + ", " + mostExports + "]";
  }
}
