package shinline.cli.command;

import shinline.cli.context.CommandContext;
import shinline.cli.outcome.Progress;
import shinline.cli.session.SessionListener;
import shinline.cli.words.Words;

/** Says on the terminal how a session goes. */
record ToldSession(CommandContext context) implements SessionListener {
  @Override
  public void say(String line) {
    context.out().println(line);
    context.out().flush();
  }

  @Override
  public void complain(String line) {
    context.complain(line);
  }

  @Override
  public void fault(String clip, Throwable cause) {
    context.fault(Words.say("fault.in-clip", clip), cause);
  }

  @Override
  public Progress measuring(String label) {
    return context.progress(label);
  }
}
