package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** Callers known by another server: tokens signed by a key that it publishes. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@IntegrationTest
class TokensTest {

  private RSAKey trusted;
  private HttpServer published;
  private RunningService service;

  @BeforeAll
  void start(@TempDir Path directory) throws IOException, JOSEException {
    trusted = new RSAKeyGenerator(2048).keyID("one").generate();
    byte[] keys = new JWKSet(trusted.toPublicJWK()).toString().getBytes(StandardCharsets.UTF_8);
    published = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    published.createContext(
        "/keys",
        exchange -> {
          exchange.sendResponseHeaders(200, keys.length);
          exchange.getResponseBody().write(keys);
          exchange.close();
        });
    published.start();
    service =
        RunningService.start(
            directory,
            Path.of("rules"),
            "--standproud.access=keys",
            "--spring.security.oauth2.resourceserver.jwt.jwk-set-uri=http://127.0.0.1:"
                + published.getAddress().getPort()
                + "/keys",
            "--spring.security.oauth2.resourceserver.jwt.audiences=standproud");
  }

  @AfterAll
  void stop() {
    service.close();
    published.stop(0);
  }

  private static JWTClaimsSet.Builder claims(Object roles) {
    return new JWTClaimsSet.Builder()
        .subject("erp")
        .audience("standproud")
        .expirationTime(Date.from(Instant.now().plus(Duration.ofMinutes(5))))
        .claim("roles", roles);
  }

  private static String signed(JWTClaimsSet claims, RSAKey key) throws JOSEException {
    SignedJWT token =
        new SignedJWT(
            new JWSHeader.Builder(JWSAlgorithm.RS256).keyID(key.getKeyID()).build(), claims);
    token.sign(new RSASSASigner(key));
    return token.serialize();
  }

  private HttpResponse<String> get(String path, String token) {
    return service
        .caller()
        .send(service.caller().to(path).header("Authorization", "Bearer " + token).GET());
  }

  @Test
  void aTokenGivesTheRolesThatItsClaimNamesAndNoOthers() throws JOSEException {
    String caller = signed(claims("caller king").build(), trusted);
    assertThat(get("/v1/rules", caller).statusCode()).isEqualTo(200);
    assertThat(get("/v1/audit/records", caller).statusCode()).isEqualTo(403);
    String auditor = signed(claims(List.of("auditor", 7)).build(), trusted);
    assertThat(get("/v1/audit/access?status=403", auditor).body()).contains("token:erp");
    String nameless = signed(claims(List.of()).build(), trusted);
    assertThat(get("/v1/rules", nameless).statusCode()).isEqualTo(403);
  }

  @Test
  void aTokenOfAnotherSignerForAnotherServiceExpiredOrWithoutACallerIsRefused()
      throws JOSEException {
    RSAKey stranger = new RSAKeyGenerator(2048).keyID("one").generate();
    assertThat(get("/v1/rules", signed(claims("caller").build(), stranger)).statusCode())
        .isEqualTo(401);
    for (JWTClaimsSet.Builder wrong :
        List.of(
            claims("caller").audience("another service"),
            claims("caller").expirationTime(Date.from(Instant.now().minusSeconds(3600))),
            claims("caller").subject(""),
            claims("caller").subject("a\nb"),
            claims("caller").subject("x".repeat(300)))) {
      HttpResponse<String> refused = get("/v1/rules", signed(wrong.build(), trusted));
      assertThat(refused.statusCode()).as(refused.body()).isEqualTo(401);
      assertThat(refused.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    }
  }
}
