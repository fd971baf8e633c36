package shinline.cli.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.EveryJsonFits.WritesWhatDoesNotFit;
import shinline.cli.Sets;
import shinline.cli.comparison.ResultComparison.Measured;
import shinline.cli.format.ResultJson;
import shinline.cli.outcome.CoachException;

class ResultComparisonTest {
  @TempDir Path folder;

  /** A written result, its first rep once for each shin angle, 3 degrees either way. */
  private Path result(String name, double... shins) throws IOException {
    StringWriter text = new StringWriter();
    ResultJson.write(Sets.measured("x.mp4"), text);
    ObjectNode result = (ObjectNode) new ObjectMapper().readTree(text.toString());
    ObjectNode rep = (ObjectNode) result.at("/reps/0");
    ArrayNode reps = result.putArray("reps");
    for (double shin : shins) {
      ObjectNode one = reps.addObject().setAll(rep.deepCopy());
      one.withObject("/atBottom/shinDeg")
          .put("value", shin)
          .put("plusMinus", 3)
          .put("plusMinusWithin", 1);
      one.withObject("/atBottom").putNull("trunkLeanDeg");
      one.withObject("/tempo/holdS").put("value", 2);
    }
    return Files.writeString(folder.resolve(name), result.toString());
  }

  /** The ± of a difference of two is the root of the sum of their squares: 1.41 for 1 and 1. */
  @Test
  void whatIsCloserThanTheIntervalOfADifferenceRepeats() throws IOException {
    Path a = result("a.json", 30, 31);
    List<String> close = ResultComparison.ofTwo(a, result("b.json", 30.5, 31.5));
    assertThat(close).anyMatch(l -> l.startsWith("shin: repeats.") && l.contains("0.5 deg"));
    assertThat(close).anyMatch(l -> l.startsWith("trunk lean: not measured"));
    List<String> apart = ResultComparison.ofTwo(a, result("c.json", 31.5, 31));
    assertThat(apart).anyMatch(l -> l.startsWith("shin: does not repeat.") && l.contains("1 of 2"));
    assertThat(ResultComparison.ofTwo(a, result("d.json", 30)))
        .anyMatch(l -> l.contains("One has 2 reps, the other 1"));
  }

  @Test
  void ameasurementIsHeldAgainstTheWholeInterval() throws IOException {
    Path a = result("a.json", 30, 31);
    List<Measured> two = List.of(new Measured("shin=33.5deg"), new Measured("hold=2.05 s"));
    assertThat(ResultComparison.ofMeasured(a, two, Optional.of(2)))
        .anyMatch(l -> l.startsWith("shin: agrees.") && l.contains("31.0 deg ± 3.0"))
        .anyMatch(l -> l.startsWith("hold: agrees."));
    assertThat(ResultComparison.ofMeasured(a, List.of(new Measured("shin=34deg")), Optional.of(1)))
        .anyMatch(l -> l.startsWith("shin: differs.") && l.contains("4.0 deg apart"));
  }

  @Test
  @WritesWhatDoesNotFit
  void whatDoesNotFitIsSaid() throws IOException {
    Path a = result("a.json", 30, 31);
    List<Measured> shin = List.of(new Measured("shin=32deg"));
    assertThatThrownBy(() -> ResultComparison.ofMeasured(a, shin, Optional.empty()))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("--rep");
    assertThatThrownBy(() -> ResultComparison.ofMeasured(a, shin, Optional.of(3)))
        .hasMessageContaining("rep 3 is not in");
    assertThatThrownBy(
            () ->
                ResultComparison.ofMeasured(
                    a, List.of(new Measured("shine=32deg")), Optional.of(1)))
        .hasMessageContaining("shine=32deg");
    assertThatThrownBy(
            () ->
                ResultComparison.ofMeasured(a, List.of(new Measured("shin=32cm")), Optional.of(1)))
        .hasMessageContaining("fitting unit");
    Path text = Files.writeString(folder.resolve("t.json"), "no json");
    assertThatThrownBy(() -> ResultComparison.ofTwo(a, text)).hasMessageContaining("is no JSON");
    assertThatThrownBy(() -> ResultComparison.ofTwo(a, folder.resolve("gone.json")))
        .hasMessageContaining("cannot be read");
    for (String other : List.of("{}", "", "[]", "null", "{\"reps\":[{}]}", "{\"reps\":3}")) {
      Path file = Files.writeString(folder.resolve("o.json"), other);
      assertThatThrownBy(() -> ResultComparison.ofTwo(file, a)).hasMessageContaining("no result");
    }
    Path none = result("none.json");
    assertThatThrownBy(() -> ResultComparison.ofTwo(none, a)).hasMessageContaining("no measured");
  }
}
