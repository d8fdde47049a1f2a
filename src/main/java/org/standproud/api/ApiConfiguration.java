package org.standproud.api;

import org.apache.catalina.core.StandardHost;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.filter.ShallowEtagHeaderFilter;
import org.standproud.api.problem.ProblemValve;

/** Filters and server settings of the API. */
@Configuration(proxyBeanMethods = false)
class ApiConfiguration {

  @Bean
  FilterRegistrationBean<ShallowEtagHeaderFilter> catalogueTags() {
    FilterRegistrationBean<ShallowEtagHeaderFilter> tags =
        new FilterRegistrationBean<>(new ShallowEtagHeaderFilter());
    tags.addUrlPatterns(AnswerHeaders.CATALOGUE, AnswerHeaders.CATALOGUE + "/*");
    return tags;
  }

  /** Names on the shelf hold slashes, which clients send as %2F; every refusal is a problem. */
  @Bean
  WebServerFactoryCustomizer<TomcatServletWebServerFactory> server() {
    return server -> {
      server.addConnectorCustomizers(
          connector -> connector.setEncodedSolidusHandling("passthrough"));
      server.addContextCustomizers(
          context ->
              ((StandardHost) context.getParent())
                  .setErrorReportValveClass(ProblemValve.class.getName()));
    };
  }
}
