package shinline.cli.context;

import java.io.PrintWriter;
import shinline.cli.outcome.Progress;
import shinline.cli.text.Paint;
import shinline.cli.text.ProgressLine;
import shinline.cli.text.Typography;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;

/**
 * What a command may touch of the world around it, handed in so that tests read what is printed.
 *
 * @param watched whether a person watches the error stream, and progress is worth showing
 */
public record CommandContext(
    PrintWriter out, PrintWriter err, Typography signs, Paint paint, Watched watched) {

  /** Whether somebody looks on. */
  public enum Watched {
    TERMINAL,
    PIPE
  }

  public Progress progress(String label) {
    return watched == Watched.TERMINAL
        ? new ProgressLine(err, PrintedName.of(label))
        : Progress.silent();
  }

  /** Says on the output stream, at once. */
  public void say(String what) {
    out.println(what);
    out.flush();
  }

  /** Says on the error stream what is wrong, at once. */
  public void complain(String what) {
    err.println("shinline: " + PrintedName.inLines(what));
    err.flush();
  }

  /**
   * * Says that the program itself failed. The trace is for whoever mends it, and only on request.
   *
   * @param where file name and colon, or empty
   */
  public void fault(String where, Throwable cause) {
    if (System.getenv("SHINLINE_DEBUG") != null) {
      cause.printStackTrace(err);
    }
    complain(where + Words.say("fault.inside", String.valueOf(cause.getMessage())));
  }
}
