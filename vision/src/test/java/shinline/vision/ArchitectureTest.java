package shinline.vision;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

@AnalyzeClasses(packages = "shinline.vision", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule PACKAGES_FORM_NO_CYCLE =
      SlicesRuleDefinition.slices()
          .matching("shinline.(**)")
          .should()
          .beFreeOfCycles()
          .because("a package must be understood, tested and moved without those that use it");

  @ArchTest
  static final ArchRule CONVERSION_IS_FOR_THE_BUILD_ALONE =
      noClasses()
          .that()
          .resideOutsideOfPackage("shinline.vision.conversion..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("shinline.vision.conversion..")
          .because("the running program's jar does not hold it");
}
