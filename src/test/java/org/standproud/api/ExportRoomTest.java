package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import org.standproud.refusal.ConcurrencyLimit;
import org.standproud.refusal.TooManyExportsException;

@IntegrationTest
class ExportRoomTest {

  @Test
  void aPlaceIsFreeAgainOnceItIsClosed() {
    ConcurrencyLimit room = new ConcurrencyLimit(2, TooManyExportsException::new);
    ConcurrencyLimit.Place one = room.place();
    try (ConcurrencyLimit.Place other = room.place()) {
      assertThatThrownBy(room::place)
          .isInstanceOf(TooManyExportsException.class)
          .hasMessageContaining("2");
    }
    one.close();
    try (ConcurrencyLimit.Place again = room.place();
        ConcurrencyLimit.Place third = room.place()) {
      assertThatThrownBy(room::place).isInstanceOf(TooManyExportsException.class);
    }
  }

  @Test
  void whatReadsRecordsWholeIsRefusedWhereThereIsNoRoom(@TempDir Path records) {
    try (RunningService service =
        RunningService.start(records, Path.of("rules"), "--standproud.audit.most-exports=0")) {
      for (String path : new String[] {"chain", "verification", "records"}) {
        HttpResponse<String> refused = service.caller().get("/v1/audit/" + path);
        assertThat(refused.statusCode()).as(path).isEqualTo(503);
        assertThat(refused.headers().firstValue("Retry-After")).isPresent();
        assertThat(refused.body()).contains("/problems/too-many-exports");
      }
      assertThat(service.caller().assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
    }
  }
}
