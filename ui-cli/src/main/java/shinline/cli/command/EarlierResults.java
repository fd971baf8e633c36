package shinline.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import shinline.cli.context.CommandContext;
import shinline.cli.file.WholeFile;
import shinline.cli.words.Words;

/**
 * What an earlier run wrote of a clip or picture that broke since must not look like today's. Where
 * the clip is not there at all, on a card that was taken out, it is all there is, and stays.
 */
final class EarlierResults {
  private final boolean broken;
  private final List<WholeFile> left = new ArrayList<>();

  /**
   * @param input the clip or picture that could not be read
   */
  EarlierResults(Path input) {
    broken = Files.exists(input);
  }

  /** Whether the input is there, so that what came of it before may go. */
  boolean mayGo() {
    return broken;
  }

  /**
   * @param mark how a file of ours begins; empty for one that only we can have made
   */
  void withdraw(WholeFile file, String mark) {
    boolean gone = broken ? file.withdraw(mark) : !Files.isRegularFile(file.path());
    if (!gone) {
      left.add(file);
    }
  }

  /** Says what had to stay. */
  void tell(CommandContext surroundings) {
    left.forEach(f -> surroundings.complain(Words.say("check.from-earlier", f.path())));
  }
}
