package empty;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Takes a body and gives one of the size of an answer. */
@SpringBootApplication
@RestController
public class Empty {

  private static final byte[] ANSWER = new byte[Integer.getInteger("empty.answer.bytes", 16_000)];

  /** Starts it. */
  public static void main(String[] args) {
    SpringApplication.run(Empty.class, args);
  }

  /** Does nothing with a request. */
  @PostMapping(path = "/v1/assessments", consumes = MediaType.APPLICATION_JSON_VALUE)
  public ResponseEntity<byte[]> post(@RequestBody byte[] body) {
    return ResponseEntity.status(HttpStatus.CREATED)
        .contentType(MediaType.APPLICATION_JSON)
        .body(ANSWER);
  }
}
