package org.standproud;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Holds the one picture of the design: setup, mechanics, rules, advice, audit, with api on top. */
@AnalyzeClasses(packages = "org.standproud", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule nothingOnTheLeftKnowsAnythingOnItsRight =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
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
          .layer("drawing")
          .definedBy("org.standproud.drawing..")
          .layer("api")
          .definedBy("org.standproud.api..")
          .layer("web")
          .definedBy("org.standproud.web..")
          .whereLayer("web")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("api")
          .mayOnlyBeAccessedByLayers("web")
          .whereLayer("drawing")
          .mayOnlyBeAccessedByLayers("api", "web")
          .whereLayer("audit")
          .mayOnlyBeAccessedByLayers("api", "web")
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("audit", "drawing", "api", "web")
          .whereLayer("rules")
          .mayOnlyBeAccessedByLayers("advice", "audit", "api", "web")
          .whereLayer("mechanics")
          .mayOnlyBeAccessedByLayers("rules", "advice", "audit", "drawing", "api", "web");

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
