package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** A service with a certificate of its own, turned on by the properties the README names. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@IntegrationTest
class TlsTest {

  private static final String PASSWORD = "only for this test";

  private RunningService service;
  private SSLContext trusting;

  @BeforeAll
  void start(@TempDir Path directory) throws Exception {
    Path keys = directory.resolve("service.p12");
    makeCertificate(keys);
    trusting = trusting(keys);
    service =
        RunningService.start(
            directory.resolve("records"),
            Path.of("rules"),
            "--spring.ssl.bundle.jks.service.keystore.location=" + keys.toUri(),
            "--spring.ssl.bundle.jks.service.keystore.password=" + PASSWORD,
            "--server.ssl.bundle=service");
  }

  @AfterAll
  void stop() {
    service.close();
  }

  private static void makeCertificate(Path keys) throws Exception {
    String keytool = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
    List<String> command =
        List.of(
            keytool,
            "-genkeypair",
            "-alias",
            "service",
            "-keyalg",
            "EC",
            "-groupname",
            "secp256r1",
            "-dname",
            "CN=localhost",
            "-ext",
            "san=dns:localhost,ip:127.0.0.1",
            "-validity",
            "2",
            "-storetype",
            "PKCS12",
            "-keystore",
            keys.toString(),
            "-storepass",
            PASSWORD);
    assertThat(new ProcessBuilder(command).inheritIO().start().waitFor()).isZero();
  }

  private static SSLContext trusting(Path keys) throws Exception {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(keys)) {
      store.load(in, PASSWORD.toCharArray());
    }
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("service", store.getCertificate("service"));
    TrustManagerFactory factory =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    factory.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, factory.getTrustManagers(), null);
    return context;
  }

  @Test
  void aSetUpIsJudgedOverTlsWithStrictTransportSecurity() throws Exception {
    HttpResponse<String> answer = posted(trusting);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    // RFC 6797
    assertThat(answer.headers().firstValue("Strict-Transport-Security").orElseThrow())
        .startsWith("max-age=31536000");
    assertThat(answer.sslSession().orElseThrow().getProtocol()).isIn("TLSv1.3", "TLSv1.2");
  }

  @Test
  void aCallerWhoDoesNotTrustTheCertificateSendsNothing() throws Exception {
    SSLContext strangers = SSLContext.getInstance("TLS");
    strangers.init(null, null, null);
    assertThatThrownBy(() -> posted(strangers)).isInstanceOf(SSLHandshakeException.class);
  }

  private HttpResponse<String> posted(SSLContext context) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(
                URI.create("https://127.0.0.1:" + service.caller().port() + "/v1/assessments"))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(RunningService.seed("01").toString()))
            .build();
    return HttpClient.newBuilder()
        .sslContext(context)
        .build()
        .send(request, HttpResponse.BodyHandlers.ofString());
  }

  @Test
  void plainHttpIsNotAnsweredOnThatPort() {
    HttpResponse<String> refused = service.get("/v1/catalogue/machines");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).doesNotContain("machines");
  }

  /**
   * TLS 1.1 and older are not to be used (RFC 8996). The client hello is written by hand (RFC 4346,
   * 7.4.1.2), because this Java would not send one; the service has to end it with an alert.
   */
  @Test
  void anOldProtocolIsRefusedWithAnAlert() throws IOException {
    byte[] hello = hello((byte) 2);
    try (Socket socket = new Socket("127.0.0.1", service.caller().port())) {
      socket.getOutputStream().write(hello);
      socket.getOutputStream().flush();
      byte[] alert = socket.getInputStream().readNBytes(7);
      assertThat(alert).hasSize(7);
      assertThat(alert[0]).as("an alert").isEqualTo((byte) 21);
      assertThat(alert[6]).as("protocol_version").isEqualTo((byte) 70);
    }
  }

  /** A client hello with random of zeros and two suites that TLS 1.1 and 1.2 share. */
  private static byte[] hello(byte minor) {
    byte[] body = new byte[2 + 32 + 1 + 2 + 4 + 2];
    body[0] = 3;
    body[1] = minor;
    int suites = 2 + 32 + 1;
    body[suites + 1] = 4;
    body[suites + 2] = (byte) 0xC0; // TLS_ECDHE_ECDSA_WITH_AES_128_CBC_SHA
    body[suites + 3] = 0x09;
    body[suites + 5] = 0x2F; // TLS_RSA_WITH_AES_128_CBC_SHA
    body[suites + 6] = 1; // one compression method, none
    byte[] record = new byte[9 + body.length];
    System.arraycopy(
        new byte[] {22, 3, minor, 0, (byte) (body.length + 4), 1, 0, 0, (byte) body.length},
        0,
        record,
        0,
        9);
    System.arraycopy(body, 0, record, 9, body.length);
    return record;
  }

  @Test
  void aCallerOfTheOlderOfTheTwoProtocolsInUseIsServed() throws IOException {
    try (SSLSocket socket =
        (SSLSocket)
            trusting.getSocketFactory().createSocket("127.0.0.1", service.caller().port())) {
      SSLParameters parameters = socket.getSSLParameters();
      parameters.setProtocols(new String[] {"TLSv1.2"});
      socket.setSSLParameters(parameters);
      socket.startHandshake();
      assertThat(socket.getSession().getProtocol()).isEqualTo("TLSv1.2");
    }
  }
}
