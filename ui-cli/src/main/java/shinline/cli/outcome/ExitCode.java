package shinline.cli.outcome;

/** What the process tells the shell. The order of severity is that of {@link #worse}. */
public enum ExitCode {
  /** Every clip was measured. */
  MEASURED(0, 0),
  /** At least one clip could be read but not measured. */
  NOT_MEASURED(4, 1),
  /** At least one clip could not be read. */
  UNREADABLE(3, 2),
  /** The command was used wrongly, or a result could not be written. */
  USAGE(2, 3),
  /** The program itself is at fault; kept apart from everything a coach can mend. */
  INTERNAL(70, 4);

  private final int number;
  private final int severity;

  ExitCode(int number, int severity) {
    this.number = number;
    this.severity = severity;
  }

  public int number() {
    return number;
  }

  /** The one of the two that a coach must look at first. */
  public ExitCode worse(ExitCode other) {
    return severity >= other.severity ? this : other;
  }
}
