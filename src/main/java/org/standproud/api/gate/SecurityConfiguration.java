package org.standproud.api.gate;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpHeaders;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.CsrfConfigurer;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.savedrequest.CookieRequestCache;
import org.standproud.access.AccessMode;
import org.standproud.access.AccessProperties;
import org.standproud.access.Role;
import org.standproud.access.keys.KeyRing;

/** The order of the security filters. */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
@ConditionalOnWebApplication(type = ConditionalOnWebApplication.Type.SERVLET)
class SecurityConfiguration {

  private final AccessDenialHandler refusals;

  SecurityConfiguration(AccessDenialHandler refusals) {
    this.refusals = refusals;
  }

  @Bean
  SecurityFilterChain gate(
      HttpSecurity http, AccessProperties properties, KeyOrTokenResolver known, KeyRing keys) {
    http.csrf(this::forms)
        .headers(
            headers ->
                headers.defaultsDisabled().httpStrictTransportSecurity(Customizer.withDefaults()))
        .requestCache(cache -> cache.requestCache(pagesAskedFor()))
        .exceptionHandling(
            handling -> handling.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
        .authorizeHttpRequests(SecurityConfiguration::table)
        .addFilterBefore(new CrossSiteRequestFilter(refusals), CsrfFilter.class);
    if (properties.access() == AccessMode.OPEN) {
      return http.addFilterBefore(new AnonymousCallerFilter(), AnonymousAuthenticationFilter.class)
          .build();
    }
    long callsPerMinute = properties.limits().callsPerMinute();
    if (callsPerMinute > 0) {
      http.addFilterBefore(
          new RateLimitFilter(callsPerMinute, refusals), AuthorizationFilter.class);
    }
    return http.addFilterBefore(new SessionKeyFilter(keys), CsrfFilter.class)
        .authenticationManager(known)
        .oauth2ResourceServer(
            tokens ->
                tokens
                    .authenticationManagerResolver(request -> known)
                    .authenticationEntryPoint(refusals)
                    .accessDeniedHandler(refusals))
        .formLogin(
            form ->
                form.loginPage("/sign-in")
                    .passwordParameter("key")
                    .failureHandler(refusals::signInRefused))
        .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in"))
        .build();
  }

  /** The table decides; an internal forward is no new call. */
  private static void table(
      AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry
          rules) {
    rules
        .dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD, DispatcherType.ASYNC)
        .permitAll();
    for (AccessTableAuthorization.Rule rule : AccessTableAuthorization.rules()) {
      var calls = rules.requestMatchers(rule.fits());
      if (rule.row().open()) {
        calls.permitAll();
      } else {
        calls.hasAnyAuthority(rule.row().roles().stream().map(Role::name).toArray(String[]::new));
      }
    }
  }

  /** Redirects to the page asked for after sign-in; a refused client gets no cookie. */
  private static CookieRequestCache pagesAskedFor() {
    CookieRequestCache cache = new CookieRequestCache();
    cache.setRequestMatcher(
        request -> request.getMethod().equals("GET") && AccessDenialHandler.isForPeople(request));
    return cache;
  }

  /**
   * Forms carry a token. A client of the API sends its key in a header, which another site's page
   * cannot make a browser send; a page that calls the API in a session sends the token in the
   * header X-XSRF-TOKEN.
   */
  private void forms(CsrfConfigurer<HttpSecurity> csrf) {
    CookieCsrfTokenRepository cookie = new CookieCsrfTokenRepository();
    cookie.setCookieCustomizer(c -> c.sameSite("Strict"));
    csrf.csrfTokenRepository(cookie)
        .requireCsrfProtectionMatcher(
            request -> CsrfFilter.DEFAULT_CSRF_MATCHER.matches(request) && !isStateless(request));
  }

  private static boolean isStateless(HttpServletRequest request) {
    return request.getSession(false) == null
        && (request.getHeader(HttpHeaders.AUTHORIZATION) != null
            || request.getRequestURI().startsWith("/v1/"));
  }
}
