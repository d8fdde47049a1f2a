package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.api.problem.Room;
import org.standproud.api.problem.TooManyExports;

class ExportRoomTest {

  @Test
  void aPlaceIsFreeAgainOnceItIsClosed() {
    Room room = new Room(2, TooManyExports::new);
    Room.Place one = room.place();
    try (Room.Place other = room.place()) {
      assertThatThrownBy(room::place).isInstanceOf(TooManyExports.class).hasMessageContaining("2");
    }
    one.close();
    try (Room.Place again = room.place();
        Room.Place third = room.place()) {
      assertThatThrownBy(room::place).isInstanceOf(TooManyExports.class);
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
