package shinline.cli.record;

import java.io.StringWriter;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.context.CommandContext;

/** Runs command lines that measure nothing. */
public final class Shell {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** The exit code. */
  public int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    CommandContext context = PlainContext.of(out, err);
    return new Main(
            context,
            (clip, options, progress) -> {
              throw new IllegalStateException("nothing is measured here");
            })
        .run(args);
  }

  public String out() {
    return out.toString();
  }

  public String err() {
    return err.toString();
  }
}
