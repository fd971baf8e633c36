package shinline.cli.outcome;

/** Hears how far the work on a clip has come. */
public interface Progress {

  /** The clip is being opened, which says nothing yet of how long it is. */
  void opening();

  /**
   * @param done frames finished
   * @param expected frames the clip promises; 0 when it does not say
   */
  void frames(int done, int expected);

  /** The clip is finished, well or badly. */
  void end();

  /** Hears nothing, for pipes and tests. */
  static Progress silent() {
    return new Progress() {
      @Override
      public void opening() {}

      @Override
      public void frames(int done, int expected) {}

      @Override
      public void end() {}
    };
  }
}
