package shinline.metrics.result;

/** How a rep stands against the day's target. */
public enum Verdict {
  /** Every asked-for limit met. */
  HIT,
  /** Outside a limit, but within the coach's margin. */
  NEAR,
  /** Outside a limit by more than the margin. */
  MISS,
  /** The interval of a value straddles a limit, or the value could not be measured. */
  UNCLEAR
}
