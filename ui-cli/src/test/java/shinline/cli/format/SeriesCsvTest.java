package shinline.cli.format;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import shinline.cli.Sets;
import shinline.metrics.result.SeriesTable;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

class SeriesCsvTest {
  private static List<String[]> rows() throws IOException {
    return rows(CameraPath.still());
  }

  private static List<String[]> rows(CameraPath camera) throws IOException {
    StringWriter out = new StringWriter();
    SeriesCsv.write(Sets.measured("x.mp4").set().series(), 540, camera, out);
    return CsvReader.builder().ofCsvRecord(out.toString()).stream()
        .map(r -> r.getFields().toArray(String[]::new))
        .toList();
  }

  @Test
  void everyColumnOfTheTableIsWritten() {
    for (SeriesTable.Column column : SeriesTable.Column.values()) {
      assertThat(SeriesCsv.names()).contains(column.jsonName());
    }
    assertThat(SeriesCsv.names()).doesNotHaveDuplicates().startsWith("timeS", "shinDeg");
  }

  @Test
  void imageRowsCountFromTheTop() throws IOException {
    List<String> head = List.of(rows().get(0));
    String[] first = rows().get(1);
    assertThat(first[head.indexOf("timeS")]).isEqualTo("0.00000");
    assertThat(first[head.indexOf("shinDeg")]).isEqualTo("1.235");
    assertThat(first[head.indexOf("frontKneeX")]).isEqualTo("100.50");
    // 39 above the bottom row of 540 is row 540 - 1 - 39 from the top.
    assertThat(first[head.indexOf("frontKneeY")]).isEqualTo("500.00");
    assertThat(first[head.indexOf("frontKneeConfidence")]).isEqualTo("0.988");
  }

  @Test
  void pointsOfAHandHeldClipArePixelsOfTheirOwnFrame() throws IOException {
    // The first frame lies 12 px to the left of and 5 px above the still view.
    CameraPath camera =
        CameraPath.of(
            List.of(0.0, 10.0), List.of(new Similarity(1, 0, 12, 5), Similarity.IDENTITY));
    List<String> head = List.of(rows(camera).get(0));
    String[] first = rows(camera).get(1);
    assertThat(first[head.indexOf("frontKneeX")]).isEqualTo("88.50");
    assertThat(first[head.indexOf("frontKneeY")]).isEqualTo("495.00");
  }

  @Test
  void whatWasNotSeenIsAnEmptyCell() throws IOException {
    List<String> head = List.of(rows().get(0));
    String[] second = rows().get(2);
    assertThat(second).hasSameSizeAs(head);
    assertThat(second[head.indexOf("shinDeg")]).isEmpty();
    assertThat(second[head.indexOf("frontKneeY")]).isEmpty();
    assertThat(second[head.indexOf("nearEarX")]).isEmpty();
  }
}
