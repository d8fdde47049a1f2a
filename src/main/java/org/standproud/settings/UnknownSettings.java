package org.standproud.settings;

import java.lang.reflect.RecordComponent;
import java.util.Comparator;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.beans.factory.config.ConfigurableListableBeanFactory;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DataObjectPropertyName;
import org.springframework.boot.context.properties.source.ConfigurationPropertyName;
import org.springframework.context.EnvironmentAware;
import org.springframework.core.annotation.AnnotationUtils;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.EnumerablePropertySource;
import org.springframework.core.env.Environment;
import org.springframework.core.env.PropertySource;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.core.env.SystemEnvironmentPropertySource;
import org.springframework.stereotype.Component;

/**
 * Refuses to start with an unknown property of this service, so that a typo never leaves a default
 * in place. Known properties are those of the records annotated with {@link
 * ConfigurationProperties}.
 */
@Component
final class UnknownSettings implements BeanFactoryPostProcessor, EnvironmentAware {

  private static final String PREFIX = "standproud";

  /** Kubernetes sets these variables for a service of the same name. */
  private static final Pattern NOT_OURS =
      Pattern.compile("STANDPROUD_(SERVICE_HOST|SERVICE_PORT.*|PORT|PORT_.*)");

  /** Properties whose value is not shown. */
  private static final Pattern SECRET = Pattern.compile("(?i)key|secret|password");

  private Environment environment = new StandardEnvironment();

  @Override
  public void setEnvironment(Environment environment) {
    this.environment = environment;
  }

  @Override
  public void postProcessBeanFactory(ConfigurableListableBeanFactory beans) {
    Set<String> known = new TreeSet<>();
    for (String bean : beans.getBeanDefinitionNames()) {
      Class<?> type = bean.startsWith(PREFIX) ? beans.getType(bean, false) : null;
      ConfigurationProperties properties =
          type == null ? null : AnnotationUtils.findAnnotation(type, ConfigurationProperties.class);
      if (type != null && properties != null) {
        addNames(properties.value(), type, known);
      }
    }
    if (environment instanceof ConfigurableEnvironment given) {
      for (PropertySource<?> source : given.getPropertySources()) {
        if (source instanceof EnumerablePropertySource<?> listed) {
          check(listed, known);
        }
      }
    }
  }

  private static void addNames(String prefix, Class<?> type, Set<String> names) {
    for (RecordComponent component : type.getRecordComponents()) {
      String name = prefix + "." + DataObjectPropertyName.toDashedForm(component.getName());
      if (component.getType().isRecord()) {
        addNames(name, component.getType(), names);
      } else {
        names.add(name);
      }
    }
  }

  private static void check(EnumerablePropertySource<?> source, Set<String> known) {
    boolean variables = source instanceof SystemEnvironmentPropertySource;
    for (String name : source.getPropertyNames()) {
      boolean unknown = variables ? isUnknownVariable(name, known) : isUnknownProperty(name, known);
      if (unknown) {
        throw new SettingRefused(
            name,
            SECRET.matcher(name).find() ? null : source.getProperty(name),
            "This property does not exist; the nearest is " + nearest(name, known) + ".");
      }
    }
  }

  private static boolean isUnknownProperty(String name, Set<String> known) {
    if (!name.toLowerCase(Locale.ROOT).startsWith(PREFIX + ".")) {
      return false;
    }
    ConfigurationPropertyName given = ConfigurationPropertyName.adapt(name, '.');
    ConfigurationPropertyName whole = given;
    while (whole.isLastElementIndexed()) { // an element of a list
      whole = whole.getParent();
    }
    ConfigurationPropertyName asked = whole;
    return known.stream().map(ConfigurationPropertyName::of).noneMatch(asked::equals);
  }

  private static boolean isUnknownVariable(String name, Set<String> known) {
    String upper = name.toUpperCase(Locale.ROOT);
    if (!upper.startsWith("STANDPROUD_") || NOT_OURS.matcher(upper).matches()) {
      return false;
    }
    String given = upper.replaceAll("(_[0-9]+)+$", "");
    return known.stream()
        .map(property -> property.toUpperCase(Locale.ROOT).replace('.', '_'))
        .noneMatch(
            one -> given.equals(one.replace("-", "")) || given.equals(one.replace('-', '_')));
  }

  private static String nearest(String name, Set<String> known) {
    String given = name.toLowerCase(Locale.ROOT).replace('_', '.');
    return known.stream()
        .min(
            Comparator.comparingInt(
                one -> LevenshteinDistance.getDefaultInstance().apply(given, one)))
        .orElse("none");
  }
}
