package shinline.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shinline.cli.crossing.TrackCrossing;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.RawSighting;
import shinline.vision.observation.PicturePoint;
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

  @ArchTest
  static final ArchRule PACKAGES_FORM_NO_CYCLE =
      SlicesRuleDefinition.slices()
          .matching("shinline.(**)")
          .should()
          .beFreeOfCycles()
          .because("a package must be understood, tested and moved without those that use it");

  @ArchTest
  static final ArchRule POINTS_OF_BOTH_SIDES_MEET_IN_THE_CROSSING =
      classes()
          .that()
          .resideOutsideOfPackage(TrackCrossing.class.getPackageName())
          .should(
              notKnowBoth(
                  List.of(Keypoint.class, PicturePoint.class),
                  List.of(Point.class, RawSighting.class)))
          .because("whoever holds a point of each side can turn y over, or forget to");

  private static ArchCondition<JavaClass> notKnowBoth(List<Class<?>> down, List<Class<?>> up) {
    return new ArchCondition<>("not know points with y down and points with y up") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        Set<String> known =
            item.getDirectDependenciesFromSelf().stream()
                .map(d -> d.getTargetClass().getName())
                .collect(Collectors.toSet());
        boolean both =
            down.stream().anyMatch(c -> known.contains(c.getName()))
                && up.stream().anyMatch(c -> known.contains(c.getName()));
        events.add(new SimpleConditionEvent(item, !both, item.getName() + " knows both"));
      }
    };
  }
}
