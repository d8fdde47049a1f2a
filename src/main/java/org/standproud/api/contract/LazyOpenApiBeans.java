package org.standproud.api.contract;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.beans.factory.config.ConfigurableListableBeanFactory;
import org.springframework.stereotype.Component;

/** Creates the springdoc beans at the first request for the contract instead of at start. */
@Component
class LazyOpenApiBeans implements BeanFactoryPostProcessor {

  private static final String WRITER = "org.springdoc.";

  /** The controller that serves the contract. */
  private static final String ANSWERING = "openApiResource";

  /** Register converters for all of springdoc; no other bean depends on them. */
  private static final String[] BEFORE = {"modelConverterRegistrar", "initExtraSchemas"};

  @Override
  public void postProcessBeanFactory(ConfigurableListableBeanFactory beans) {
    for (String name : beans.getBeanDefinitionNames()) {
      BeanDefinition bean = beans.getBeanDefinition(name);
      if (isOfWriter(bean.getFactoryBeanName()) || isOfWriter(bean.getBeanClassName())) {
        bean.setLazyInit(true);
      }
    }
    if (beans.containsBeanDefinition(ANSWERING)) { // Commands have no web server.
      beans.getBeanDefinition(ANSWERING).setDependsOn(BEFORE);
    }
  }

  private static boolean isOfWriter(@Nullable String name) {
    return name != null && name.startsWith(WRITER);
  }
}
