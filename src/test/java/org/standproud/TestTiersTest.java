package org.standproud;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A test that starts a service, a server, a browser or another program is not a quick one. */
class TestTiersTest {

  /** Beginnings of the names of classes that reach beyond this process or start the service. */
  private static final List<String> HEAVY =
      List.of(
          "java.lang.ProcessBuilder",
          "io.zonky.test.",
          "kafka.",
          "org.openqa.selenium.",
          "org.springframework.boot.SpringApplication",
          "org.springframework.boot.builder.",
          "org.springframework.boot.test.",
          "org.springframework.kafka.test.",
          "org.standproud.Standproud");

  private final JavaClasses tests =
      new ClassFileImporter()
          .withImportOption(location -> location.contains("/test-classes/"))
          .importPackages("org.standproud");

  @Test
  void aTestThatStartsSomethingIsMarked() {
    Set<String> unmarked = new TreeSet<>();
    for (JavaClass test : tests) {
      if (isRun(test) && !isMarked(test) && reachesHeavy(test)) {
        unmarked.add(test.getName());
      }
    }
    assertThat(unmarked).as("to be annotated with @IntegrationTest").isEmpty();
  }

  @Test
  void theSearchFindsWhatStartsAService() {
    assertThat(tests.stream().filter(TestTiersTest::isMarked).filter(this::reachesHeavy))
        .as("marked tests of which it is seen why")
        .hasSizeGreaterThan(30);
  }

  private static boolean isRun(JavaClass test) {
    return test.getSimpleName().endsWith("Test")
        && test.isTopLevelClass()
        && !test.isAnnotation()
        && !test.getModifiers().contains(JavaModifier.ABSTRACT);
  }

  private static boolean isMarked(JavaClass test) {
    return test.isAnnotatedWith(IntegrationTest.class)
        || test.getAllRawSuperclasses().stream()
            .anyMatch(above -> above.isAnnotatedWith(IntegrationTest.class));
  }

  /** Follows what a test uses among the tests, nested classes included. */
  private boolean reachesHeavy(JavaClass test) {
    Set<JavaClass> seen = new HashSet<>();
    Deque<JavaClass> open = new ArrayDeque<>(List.of(test));
    while (!open.isEmpty()) {
      JavaClass one = open.pop();
      if (!seen.add(one)) {
        continue;
      }
      for (JavaClass other : tests) {
        if (other.getEnclosingClass().filter(one::equals).isPresent()) {
          open.push(other);
        }
      }
      for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        if (HEAVY.stream().anyMatch(target.getName()::startsWith)) {
          return true;
        }
        if (tests.contain(target.getName())) {
          open.push(tests.get(target.getName()));
        }
      }
    }
    return false;
  }
}
