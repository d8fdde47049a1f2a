package org.standproud;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/**
 * Holds the picture of the design: setup, mechanics, rules, advice, audit, then the services, then
 * api and web as siblings that never see each other.
 */
@AnalyzeClasses(packages = "org.standproud", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String[] SERVICES = {
    "org.standproud.assessment..",
    "org.standproud.shop..",
    "org.standproud.access..",
    "org.standproud.events.."
  };

  @ArchTest
  static final ArchRule nothingOnTheLeftKnowsAnythingOnItsRight =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("setup")
          .definedBy("org.standproud.setup..")
          .layer("mechanics")
          .definedBy("org.standproud.mechanics..")
          .layer("rules")
          .definedBy("org.standproud.rules..")
          .layer("advice")
          .definedBy("org.standproud.advice..")
          .layer("audit")
          .definedBy("org.standproud.audit..")
          .layer("services")
          .definedBy(SERVICES)
          .layer("drawing")
          .definedBy("org.standproud.drawing..")
          .layer("command")
          .definedBy("org.standproud.command..")
          .layer("api")
          .definedBy("org.standproud.api..")
          .layer("web")
          .definedBy("org.standproud.web..")
          .whereLayer("web")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("api")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("command")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("drawing")
          .mayOnlyBeAccessedByLayers("api", "web")
          .whereLayer("services")
          .mayOnlyBeAccessedByLayers("command", "api", "web")
          .whereLayer("audit")
          .mayOnlyBeAccessedByLayers("services", "command", "api", "web")
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("audit", "services", "drawing", "command", "api", "web")
          .whereLayer("rules")
          .mayOnlyBeAccessedByLayers("advice", "audit", "services", "command", "api", "web")
          .whereLayer("mechanics")
          .mayOnlyBeAccessedByLayers(
              "rules", "advice", "audit", "services", "drawing", "command", "api", "web");

  @ArchTest
  static final ArchRule servicesKnowNoHttp =
      noClasses()
          .that()
          .resideInAnyPackage(
              "org.standproud.refusal..",
              "org.standproud.rules..",
              "org.standproud.advice..",
              "org.standproud.audit..",
              "org.standproud.assessment..",
              "org.standproud.shop..",
              "org.standproud.access..",
              "org.standproud.events..",
              "org.standproud.command..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.springframework.http..",
              "org.springframework.web..",
              "org.springframework.security..",
              "jakarta.servlet..");

  @ArchTest
  static final ArchRule noTransactionsOrValidationByAnnotation =
      noClasses()
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("org.springframework.transaction.annotation.Transactional")
          .orShould()
          .dependOnClassesThat()
          .resideInAPackage("jakarta.validation..")
          .because("their auto-configuration is off, so the annotations would do nothing");

  @ArchTest
  static final ArchRule mechanicsIsPlainJava =
      noClasses()
          .that()
          .resideInAPackage("org.standproud.mechanics..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.springframework..",
              "org.drools..",
              "org.kie..",
              "tools.jackson..",
              "com.fasterxml..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule onlyRulesSpeaksToTheEngine =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.standproud.rules..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.drools..", "org.kie..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule packagesFormNoRings =
      slices().matching("org.standproud.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule noClassIsNamedForNothing =
      noClasses()
          .should()
          .haveSimpleNameEndingWith("Util")
          .orShould()
          .haveSimpleNameEndingWith("Utils")
          .orShould()
          .haveSimpleNameEndingWith("Helper")
          .orShould()
          .haveSimpleNameEndingWith("Manager")
          .orShould()
          .haveSimpleNameEndingWith("Impl")
          .orShould()
          .haveSimpleNameStartingWith("Base");

  @ArchTest
  static final ArchRule everyPackageIsNullMarked =
      classes()
          .that()
          .haveSimpleName("package-info")
          .should()
          .beAnnotatedWith(org.jspecify.annotations.NullMarked.class);
}
