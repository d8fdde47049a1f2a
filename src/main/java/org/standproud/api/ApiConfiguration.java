package org.standproud.api;

import java.time.Duration;
import org.apache.catalina.core.StandardHost;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.filter.ShallowEtagHeaderFilter;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.standproud.api.problem.ProblemValve;
import org.standproud.api.problem.WorkLimit;

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

  /**
   * Half of the processors are left for assessments; a page asks for up to five answers at once.
   */
  @Bean
  WorkLimit workLimit() {
    int most = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);
    return new WorkLimit(most, 16 * most, Duration.ofSeconds(10));
  }

  @Bean
  WebMvcConfigurer longWork(WorkLimit limit) {
    return new WebMvcConfigurer() {
      @Override
      public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(limit).addPathPatterns(WorkLimit.ADDRESSES);
      }
    };
  }

  /** Catalogue names contain slashes, which clients send as %2F; every refusal is a problem. */
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
