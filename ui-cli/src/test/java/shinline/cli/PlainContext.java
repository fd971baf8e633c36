package shinline.cli;

import java.io.PrintWriter;
import java.io.Writer;
import shinline.cli.context.CommandContext;
import shinline.cli.text.Paint;
import shinline.cli.text.Typography;

/** Where a command runs in a test: no colours, nobody watching. */
public final class PlainContext {
  private PlainContext() {}

  public static CommandContext of(Writer out, Writer err) {
    return new CommandContext(
        new PrintWriter(out),
        new PrintWriter(err),
        Typography.RICH,
        Paint.NONE,
        CommandContext.Watched.PIPE);
  }
}
