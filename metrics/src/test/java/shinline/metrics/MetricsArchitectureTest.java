package shinline.metrics;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "shinline.metrics", importOptions = ImportOption.DoNotIncludeTests.class)
class MetricsArchitectureTest {

  @ArchTest
  static final ArchRule PURE =
      classes()
          .that()
          .resideInAPackage("shinline.metrics..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java.lang..",
              "java.math..",
              "java.text..",
              "java.time..",
              "java.util..",
              "org.hipparchus..",
              "org.jspecify.annotations..",
              "shinline.metrics..")
          .because("metrics turns numbers into numbers: no files, no images, no video, no network");

  @ArchTest
  static final ArchRule ONE_PLACE_FOR_THE_LIBRARY =
      noClasses()
          .that()
          .resideOutsideOfPackage("shinline.metrics.statistics..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.hipparchus..")
          .because("one definition of a median, a quantile and a fit holds everywhere");

  @ArchTest
  static final ArchRule LOW_LAYERS =
      classes()
          .that()
          .resideInAnyPackage(
              "shinline.metrics.signal..",
              "shinline.metrics.geometry..",
              "shinline.metrics.load..",
              "shinline.metrics.statistics..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "org.jspecify.annotations..",
              "shinline.metrics.signal..",
              "shinline.metrics.geometry..",
              "shinline.metrics.load..",
              "shinline.metrics.statistics..",
              "org.hipparchus..")
          .because("filters, angles and load arithmetic know nothing of reps, targets or results");
}
