package shinline.cli.team;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import shinline.cli.record.Origin;

/**
 * A session as its pages show it.
 *
 * @param folder name of the folder of clips
 * @param clips folder of the clips' pages and pictures
 * @param origin of the record
 * @param athletes by need, then by name
 * @param troubles clips, rows and files that did not go as they should
 * @param withoutRow clips that no row of the sheet names
 */
public record SessionView(
    String folder,
    Path clips,
    Origin origin,
    List<AthleteSession> athletes,
    List<Trouble> troubles,
    List<Unclaimed> withoutRow) {

  /**
   * Something that went wrong, and what to do.
   *
   * @param what file or row
   */
  public record Trouble(String what, String reason, String toDo) {}

  /** A clip nobody is named for. */
  public record Unclaimed(String clip, shinline.cli.finding.ClipFinding finding) {}

  public SessionView {
    athletes =
        athletes.stream()
            .sorted(Comparator.comparing(AthleteSession::need).thenComparing(a -> a.name().key()))
            .toList();
    troubles = List.copyOf(troubles);
    withoutRow = List.copyOf(withoutRow);
  }
}
