package shinline.cli.text;

import java.io.PrintWriter;
import shinline.cli.outcome.Progress;
import shinline.cli.words.Words;

/** One line on a terminal that is written over until the clip is done, then wiped. */
public final class ProgressLine implements Progress {
  private final PrintWriter err;
  private final String label;
  private int shownPercent = -1;
  private int width;

  public ProgressLine(PrintWriter err, String label) {
    this.err = err;
    this.label = label;
  }

  @Override
  public void opening() {
    show(Words.say("progress.opening", label));
  }

  @Override
  public void frames(int done, int expected) {
    // Without a promised length, every 30th frame stands for a second of clip.
    int percent = expected > 0 ? Math.min(100, 100 * done / expected) : done / 30;
    if (percent == shownPercent) {
      return;
    }
    shownPercent = percent;
    show(
        expected > 0
            ? Words.say("progress.percent", label, percent)
            : Words.say("progress.frames", label, done));
  }

  @Override
  public void end() {
    show("");
    err.print("\r");
    err.flush();
  }

  private void show(String text) {
    err.print("\r" + text + " ".repeat(Math.max(0, width - text.length())));
    err.flush();
    width = text.length();
  }
}
