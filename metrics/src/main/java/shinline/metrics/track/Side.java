package shinline.metrics.track;

/** The athlete's own side, or a direction in the picture. */
public enum Side {
  LEFT,
  RIGHT;

  public Side other() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
