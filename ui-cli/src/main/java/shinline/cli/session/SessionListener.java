package shinline.cli.session;

import shinline.cli.outcome.Progress;

/** Hears how a session goes. */
public interface SessionListener {

  /** A line for the coach. */
  void say(String line);

  /** Something wrong, and what to do. */
  void complain(String line);

  /** The program failed at a clip. */
  void fault(String clip, Throwable cause);

  /** A clip is being measured. */
  Progress measuring(String label);
}
