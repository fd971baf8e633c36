package shinline.cli.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.ResultSchema;
import shinline.cli.Sets;

class ResultJsonTest {
  private static String measured() throws IOException {
    StringWriter out = new StringWriter();
    ResultJson.write(Sets.measured("a \"b\".mp4"), out);
    return out.toString();
  }

  @Test
  void aMeasuredSetFitsTheSchema() throws IOException {
    assertThat(ResultSchema.complaints(measured())).isEmpty();
  }

  @Test
  void withNothingAskedForThereIsNoVerdict() throws IOException {
    StringWriter out = new StringWriter();
    ResultJson.write(Sets.free("x.mp4"), out);
    assertThat(ResultSchema.complaints(out.toString())).isEmpty();
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertThat(json.at("/reps/0/verdict").isNull()).isTrue();
    assertThat(json.at("/set/hits").isNull()).isTrue();
    assertThat(json.at("/cautions")).isNotEmpty();
  }

  @Test
  void aSetThatWasNotMeasuredFitsTheSchemaAndSaysWhy() throws IOException {
    StringWriter out = new StringWriter();
    ResultJson.write(Sets.notMeasured("x.mp4"), out);
    assertThat(ResultSchema.complaints(out.toString())).isEmpty();
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertThat(json.at("/notMeasured/kind").asText()).isEqualTo("not-side-view");
    assertThat(json.at("/reps")).isEmpty();
  }

  @Test
  void theSchemaRefusesARenamedKey() throws IOException {
    assertThat(ResultSchema.complaints(measured().replace("\"shinDeg\" : {", "\"shin\" : {")))
        .isNotEmpty();
  }

  @Test
  void valuesKeepTheirPlacesAndGapsTheirReasons() throws IOException {
    JsonNode json = new ObjectMapper().readTree(measured());
    assertThat(json.at("/clip/file").asText()).isEqualTo("a \"b\".mp4");
    assertThat(json.at("/setup/facing").asText()).isEqualTo("right");
    assertThat(json.at("/setup/frontLeg").asText()).isEqualTo("left");
    assertThat(json.at("/setup/scaleCmPerPx").asDouble()).isEqualTo(0.45679);
    assertThat(json.at("/setup/warnings")).hasSize(2);
    assertThat(json.at("/target/shin").asText()).isEqualTo("past-toe");
    assertThat(json.at("/target/shinBand/min").asDouble()).isEqualTo(5);
    assertThat(json.at("/target/shinBand/max").isNull()).isTrue();
    assertThat(json.at("/reps/0/atBottom/rearKneeHeightCm/value").asDouble()).isEqualTo(12.346);
    assertThat(json.at("/reps/0/atBottom/shinDeg/value").asText()).isEqualTo("0");
    assertThat(json.at("/reps/1/atBottom/rearKneeHeightCm").isNull()).isTrue();
    assertThat(json.at("/reps/1/notMeasured/rearKneeHeightCm").asText())
        .isEqualTo("the points it needs were not seen at the bottom");
    assertThat(json.at("/reps/1/notMeasured/topS").asText()).isEqualTo("no rep follows");
    assertThat(json.at("/reps/1/flags/0/kind").asText()).isEqualTo("heel-rise");
    assertThat(json.at("/set/hits").asInt()).isEqualTo(1);
    assertThat(json.at("/set/trend/trunkLeanDeg").asDouble()).isEqualTo(1.5);
  }

  @Test
  void whatIsReadBackIsWrittenTheSame(@TempDir Path folder) throws IOException {
    StringWriter free = new StringWriter();
    ResultJson.write(Sets.free("x.mp4"), free);
    StringWriter not = new StringWriter();
    ResultJson.write(Sets.notMeasured("x.mp4"), not);
    for (String text : List.of(measured(), free.toString(), not.toString())) {
      StringWriter again = new StringWriter();
      ResultJson.write(
          ResultJson.read(Files.writeString(folder.resolve("result.json"), text)), again);
      assertThat(again.toString()).isEqualTo(text);
    }
  }

  @Test
  void aKeyOfANewerVersionIsPassedOverAndALostOneIsNot(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("result.json");
    String text = measured();
    Files.writeString(file, text.replaceFirst("\\{", "{\"newer\":{},"));
    assertThat(ResultJson.read(file).reps()).hasSize(2);
    Files.writeString(file, text.replace("\"depth\"", "\"deep\""));
    assertThatThrownBy(() -> ResultJson.read(file))
        .isInstanceOf(MismatchedInputException.class)
        .hasMessageContaining("depth");
  }

  @Test
  void theTextHasUnixLineEndsAndNoNaN() throws IOException {
    assertThat(measured()).doesNotContain("\r").doesNotContain("NaN").endsWith("}");
  }
}
