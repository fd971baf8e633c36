package shinline.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import shinline.cli.crossing.TrackCrossing;
import shinline.vision.pose.Keypoint;

@AnalyzeClasses(packages = "shinline", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule METRICS_KNOWS_NOTHING_OF_VIDEO =
      noClasses()
          .that()
          .resideInAPackage("shinline.metrics..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("shinline.vision..", "shinline.cli..", "org.bytedeco..", "ai.djl..")
          .because("measures must be testable from a track file, without video or model");

  @ArchTest
  static final ArchRule VISION_KNOWS_NOTHING_OF_EXERCISE =
      noClasses()
          .that()
          .resideInAPackage("shinline.vision..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("shinline.metrics..", "shinline.cli..")
          .because("another exercise, or another pose model, must change one side only");

  @ArchTest
  static final ArchRule ONE_CROSSING =
      classes()
          .that()
          .haveFullyQualifiedName(Keypoint.class.getName())
          .should()
          .onlyBeAccessed()
          .byClassesThat()
          .resideInAnyPackage("shinline.vision..", TrackCrossing.class.getPackageName())
          .because("y is flipped and points are renamed in one place");

  @ArchTest
  static final ArchRule SERVICES_ARE_FREE_OF_THE_COMMAND_LINE =
      noClasses()
          .that()
          .resideOutsideOfPackages("shinline.cli", "shinline.cli.command")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..")
          .because("services are tested, and used by later commands, without picocli");
}
