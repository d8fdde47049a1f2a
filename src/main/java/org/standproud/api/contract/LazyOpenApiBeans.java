package org.standproud.api.contract;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.beans.factory.config.ConfigurableListableBeanFactory;
import org.springframework.stereotype.Component;

/**
 * The contract is written when somebody first asks for it: what writes it is not made at the start.
 */
@Component
class LazyOpenApiBeans implements BeanFactoryPostProcessor {

  private static final String WRITER = "org.springdoc.";

  /** Answers with the contract. */
  private static final String ANSWERING = "openApiResource";

  /** What sets up how types are told, for all that write, without being asked for by any. */
  private static final String[] BEFORE = {"modelConverterRegistrar", "initExtraSchemas"};

  @Override
  public void postProcessBeanFactory(ConfigurableListableBeanFactory beans) {
    for (String name : beans.getBeanDefinitionNames()) {
      BeanDefinition bean = beans.getBeanDefinition(name);
      if (isOfWriter(bean.getFactoryBeanName()) || isOfWriter(bean.getBeanClassName())) {
        bean.setLazyInit(true);
      }
    }
    if (beans.containsBeanDefinition(ANSWERING)) { // Not in a command, which answers nobody.
      beans.getBeanDefinition(ANSWERING).setDependsOn(BEFORE);
    }
  }

  private static boolean isOfWriter(@Nullable String name) {
    return name != null && name.startsWith(WRITER);
  }
}
