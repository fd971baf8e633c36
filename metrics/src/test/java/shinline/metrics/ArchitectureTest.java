package shinline.metrics;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

@AnalyzeClasses(packages = "shinline.metrics", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule PACKAGES_FORM_NO_CYCLE =
      SlicesRuleDefinition.slices()
          .matching("shinline.(**)")
          .should()
          .beFreeOfCycles()
          .because("a package must be understood, tested and moved without those that use it");
}
