package org.standproud.settings;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.support.DefaultListableBeanFactory;
import org.springframework.beans.factory.support.RootBeanDefinition;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.core.env.MapPropertySource;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.core.env.SystemEnvironmentPropertySource;

class UnknownSettingsTest {

  @ConfigurationProperties("standproud")
  record Shop(String access, Rules rules, Set<String> insideHosts) {

    record Rules(boolean twoPersons, Path directory) {}
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "standproud.access",
        "standproud.rules.two-persons",
        "standproud.rules.twoPersons",
        "STANDPROUD.ACCESS",
        "standproud.inside-hosts[0]",
        "server.port",
        "standproudly"
      })
  void propertiesThatExistPass(String name) {
    assertThatCode(() -> check(properties(name))).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "standproud.acces",
        "standproud.Acces",
        "standproud.rules",
        "standproud.rules.two-person",
        "standproud.access.mode",
        "standproud.rulestwo-persons",
        "standproud.inside-hosts[0].name"
      })
  void aSlipInANameIsRefused(String name) {
    assertThatThrownBy(() -> check(properties(name)))
        .isInstanceOf(SettingRefused.class)
        .hasMessageContaining(name)
        .hasMessageContaining("\"keys\"");
  }

  @Test
  void theNearestPropertyIsNamed() {
    assertThatThrownBy(() -> check(properties("standproud.rules.two-person")))
        .extracting(refused -> ((SettingRefused) refused).allowed())
        .asString()
        .contains("standproud.rules.two-persons");
  }

  /** The form of variables is that of Spring Boot's reference, "Binding From Environment". */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "STANDPROUD_ACCESS",
        "standproud_access",
        "STANDPROUD_RULES_TWOPERSONS",
        "STANDPROUD_RULES_TWO_PERSONS",
        "STANDPROUD_INSIDEHOSTS_0",
        "STANDPROUD_SERVICE_HOST",
        "STANDPROUD_PORT_8080_TCP_ADDR",
        "PATH"
      })
  void variablesThatExistPass(String name) {
    assertThatCode(() -> check(variables(name))).doesNotThrowAnyException();
  }

  @Test
  void aSlipInAVariableIsRefused() {
    assertThatThrownBy(() -> check(variables("STANDPROUD_ACCES")))
        .isInstanceOf(SettingRefused.class)
        .hasMessageContaining("STANDPROUD_ACCES");
  }

  @Test
  void whatMayBeASecretIsNotRepeated() {
    assertThatThrownBy(() -> check(properties("standproud.audit.chainkey")))
        .hasMessageContaining("standproud.audit.chainkey")
        .hasMessageNotContaining("\"keys\"");
  }

  private static MapPropertySource properties(String name) {
    return new MapPropertySource("given", Map.of(name, "keys"));
  }

  private static MapPropertySource variables(String name) {
    return new SystemEnvironmentPropertySource("systemEnvironment", Map.of(name, "keys"));
  }

  private static void check(MapPropertySource given) {
    StandardEnvironment environment = new StandardEnvironment();
    environment
        .getPropertySources()
        .forEach(s -> environment.getPropertySources().remove(s.getName()));
    environment.getPropertySources().addFirst(given);
    DefaultListableBeanFactory beans = new DefaultListableBeanFactory();
    beans.registerBeanDefinition("standproud-shop", new RootBeanDefinition(Shop.class));
    UnknownSettings check = new UnknownSettings();
    check.setEnvironment(environment);
    check.postProcessBeanFactory(beans);
  }
}
