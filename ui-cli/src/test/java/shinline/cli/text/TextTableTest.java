package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
  private static final Layout LAYOUT = new Layout(Typography.PLAIN, Paint.NONE, Units.METRIC);

  @Test
  void longHeadingsBreakAndLongWordsWrapBelowTheirCell() {
    TextTable table =
        new TextTable(
            List.of(
                new TextTable.Column("Rep", "", TextTable.Edge.RIGHT),
                new TextTable.Column("Knee past toe", "cm", TextTable.Edge.RIGHT),
                new TextTable.Column("Look at", "", TextTable.Edge.LEFT)));
    table.row(
        List.of(
            TextTable.Cell.of("1"),
            TextTable.Cell.of("-4.2"),
            TextTable.Cell.of(
                "leans more than before, turns into a hinge, shin off target, wobbles, shallow")));
    assertThat(table.lines(LAYOUT))
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80))
        .containsExactly(
            "     Knee",
            "     past",
            "Rep   toe  Look at",
            "       cm",
            "---  ----  " + "-".repeat(69),
            "  1  -4.2  leans more than before, turns into a hinge, shin off target, wobbles,",
            "           shallow");
  }
}
