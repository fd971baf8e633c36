package shinline.cli.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.record.AthleteName;
import shinline.cli.record.WrittenFiles;
import shinline.cli.team.BoardPage;
import shinline.cli.team.CardPage;
import shinline.cli.team.SessionCsv;
import shinline.cli.team.SessionView;
import shinline.cli.team.TeamPage;

/** Writes the pages and the table of a session. */
final class SessionPages {
  static final String TEAM = "team.html";

  private final Path folder;
  private final OutputFiles files;
  private final SessionStart start;

  /**
   * @param start how the pages are made, kept beside them
   */
  SessionPages(Path folder, OutputFiles files, SessionStart start) {
    this.folder = folder;
    this.files = files;
    this.start = start;
  }

  void write(SessionView session) {
    page(TEAM, TeamPage.of(session));
    page("cards.html", CardPage.of(session));
    page("board.html", BoardPage.of(session));
    file("session.csv").write(w -> SessionCsv.write(session, start.decimal(), w));
    WholeFile kept = files.file(SessionStart.place(folder), Claim.OURS);
    kept.makeFolder();
    kept.write(w -> w.write(start.json()));
  }

  List<Path> all() {
    return List.of(TEAM, "cards.html", "board.html", "session.csv").stream()
        .map(folder::resolve)
        .toList();
  }

  /** Notes the pages for everybody on them, so that a removal finds them. */
  void note(WrittenFiles written, List<AthleteName> athletes) throws IOException {
    for (AthleteName athlete : athletes) {
      for (Path file : all()) {
        written.note(athlete, file);
      }
    }
  }

  private void page(String name, String html) {
    file(name).write(w -> w.write(html));
  }

  private WholeFile file(String name) {
    WholeFile file = files.file(folder.resolve(name), Claim.OURS);
    file.makeFolder();
    return file;
  }
}
