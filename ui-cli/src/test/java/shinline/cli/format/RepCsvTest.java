package shinline.cli.format;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.cli.Sets;

class RepCsvTest {
  private static String csv(String clip) throws IOException {
    StringWriter out = new StringWriter();
    RepCsv.write(Sets.measured(clip), out);
    return out.toString();
  }

  @Test
  void oneRowARepUnderNamesOfTheResultFormat() throws IOException {
    var rows = CsvReader.builder().ofNamedCsvRecord(csv("a, \"b\".mp4")).stream().toList();
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0).getField("clip")).isEqualTo("a, \"b\".mp4");
    assertThat(rows.get(0).getField("loweringS")).isEqualTo("3.000");
    assertThat(rows.get(0).getField("kneePastToeCmPlusMinus")).isEqualTo("2.540");
    assertThat(rows.get(1).getField("rearKneeHeightCm")).isEmpty();
    assertThat(rows.get(1).getField("flags")).isEqualTo("heel-rise");
    assertThat(csv("a.mp4")).startsWith("clip,rep,verdict,").endsWith("\r\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1.mp4", "+a.mp4", "-a.mp4", "@a.mp4"})
  void aNameThatLooksLikeAFormulaIsDefused(String name) throws IOException {
    assertThat(csv(name)).contains("\n'" + name + ",");
  }

  @Test
  void numbersBelowZeroStayNumbers() throws IOException {
    assertThat(csv("a.mp4")).doesNotContain("'-");
  }

  @Test
  void theHeadingAloneIsOneLine() throws IOException {
    StringWriter out = new StringWriter();
    RepCsv.header(out);
    assertThat(out.toString().lines()).hasSize(1);
  }
}
