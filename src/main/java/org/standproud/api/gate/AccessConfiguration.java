package org.standproud.api.gate;

import java.time.Clock;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterProperties;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.server.servlet.ConfigurableServletWebServerFactory;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.oauth2.jwt.JwtDecoder;
import org.springframework.security.oauth2.server.resource.authentication.JwtAuthenticationProvider;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.standproud.access.AccessMode;
import org.standproud.access.AccessProperties;
import org.standproud.access.Role;
import org.standproud.access.journal.AccessJournal;
import org.standproud.access.keys.KeyRing;
import org.standproud.assessment.ApiProperties;
import tools.jackson.databind.json.JsonMapper;

/** Beans of the security filter chain. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnWebApplication(type = ConditionalOnWebApplication.Type.SERVLET)
class AccessConfiguration {

  @Bean
  @DependsOnDatabaseInitialization
  AccessJournal accessJournal(DataSource dataSource) {
    return new AccessJournal(dataSource, Clock.systemUTC());
  }

  @Bean
  @DependsOnDatabaseInitialization
  KeyRing keyRing(DataSource dataSource, AccessJournal journal) {
    return new KeyRing(dataSource, journal, Clock.systemUTC());
  }

  @Bean
  AccessDenialHandler refusals(AccessJournal journal, JsonMapper mapper) {
    return new AccessDenialHandler(journal, mapper);
  }

  @Bean
  SignInJournalListener signInNoted(AccessJournal journal) {
    return new SignInJournalListener(journal);
  }

  @Bean
  KeyOrTokenResolver keyOrToken(
      KeyRing keys, ObjectProvider<JwtDecoder> decoder, AccessProperties properties) {
    JwtDecoder trusted = decoder.getIfAvailable();
    if (trusted == null) {
      return new KeyOrTokenResolver(keys, null);
    }
    Map<String, Role> roles =
        Arrays.stream(Role.values())
            .collect(Collectors.toMap(r -> r.words().replace(' ', '-'), r -> r));
    JwtAuthenticationProvider tokens = new JwtAuthenticationProvider(trusted);
    tokens.setJwtAuthenticationConverter(
        new TokenCaller(properties.tokens().nameClaim(), properties.tokens().rolesClaim(), roles));
    return new KeyOrTokenResolver(keys, tokens);
  }

  /**
   * Catalogue names contain slashes and per cent signs; everything else stays as strict as by
   * default.
   */
  @Bean
  HttpFirewall httpFirewall(AccessProperties properties) {
    StrictHttpFirewall firewall = new StrictHttpFirewall();
    firewall.setAllowUrlEncodedSlash(true);
    firewall.setAllowUrlEncodedDoubleSlash(true);
    firewall.setAllowUrlEncodedPercent(true);
    if (properties.access() == AccessMode.OPEN) {
      firewall.setAllowedHostnames(new LocalHostNames());
    }
    return firewall;
  }

  @Bean
  StrangerBodies strangerBodies() {
    return new StrangerBodies();
  }

  @Bean
  FilterRegistrationBean<ParameterFilter> parameterFilter(
      AccessProperties access,
      ApiProperties api,
      AccessDenialHandler refusals,
      StrangerBodies strangers) {
    StrangerBodies limit = access.access() == AccessMode.OPEN ? null : strangers;
    FilterRegistrationBean<ParameterFilter> filter =
        new FilterRegistrationBean<>(new ParameterFilter(refusals, limit, api.slowestBody()));
    filter.setOrder(SecurityFilterProperties.DEFAULT_FILTER_ORDER - 1);
    return filter;
  }

  @Bean
  WebServerFactoryCustomizer<TomcatServletWebServerFactory> refusedBodies(
      StrangerBodies strangers) {
    return server -> server.addEngineValves(new RefusedBodyValve(strangers));
  }

  @Bean
  WebServerFactoryCustomizer<ConfigurableServletWebServerFactory> loopbackOnly(
      AccessProperties properties,
      @Value("${server.address:0.0.0.0}") String address,
      @Value("${management.server.address:127.0.0.1}") String managementAddress) {
    return server -> {
      if (properties.access() == AccessMode.OPEN) {
        Loopback.require(address);
        Loopback.require(managementAddress);
      }
    };
  }

  @Bean
  AccessModeLogger opening(
      AccessProperties properties, KeyRing keys, ObjectProvider<JwtDecoder> tokens) {
    return new AccessModeLogger(properties.access(), keys, tokens.getIfAvailable() != null);
  }
}
