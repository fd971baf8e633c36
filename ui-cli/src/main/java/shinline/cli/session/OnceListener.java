package shinline.cli.session;

import java.util.HashSet;
import java.util.Set;
import shinline.cli.outcome.Progress;

/** Tells each line once: whoever watches a folder need not read the same at every look. */
final class OnceListener implements SessionListener {
  private final SessionListener to;
  private final Set<String> told = new HashSet<>();

  OnceListener(SessionListener to) {
    this.to = to;
  }

  @Override
  public void say(String line) {
    if (told.add(line)) {
      to.say(line);
    }
  }

  @Override
  public void complain(String line) {
    if (told.add(line)) {
      to.complain(line);
    }
  }

  @Override
  public void fault(String clip, Throwable cause) {
    to.fault(clip, cause);
  }

  @Override
  public Progress measuring(String label) {
    return to.measuring(label);
  }
}
