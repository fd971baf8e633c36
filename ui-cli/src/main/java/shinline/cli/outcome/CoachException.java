package shinline.cli.outcome;

/** Ends a command with words for the coach and an exit code; never shown as a stack trace. */
public final class CoachException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ExitCode exitCode;

  /**
   * @param message which file, what is wrong, what to do
   */
  public CoachException(ExitCode exitCode, String message) {
    super(message);
    this.exitCode = exitCode;
  }

  public static CoachException usage(String message) {
    return new CoachException(ExitCode.USAGE, message);
  }

  public ExitCode exitCode() {
    return exitCode;
  }
}
