package shinline.cli.speed;

/**
 * What a check would take on four cores, computed from parts that were measured each alone: there
 * they run at once, so the longest of them counts.
 *
 * @param startS seconds until the clip is open and the models are loaded
 * @param poseS seconds of the looks, each shared between two threads
 * @param readS seconds of reading the clip as the program does, with two threads to decode
 * @param watchS core time of the thread that watches beside the pose model
 * @param endS seconds of what comes after the last look: analysis, pictures and page
 */
record FourCores(double startS, double poseS, double readS, double watchS, double endS) {
  static final int COUNT = 4;

  double wholeS() {
    return startS + Math.max(poseS, Math.max(readS, watchS)) + endS;
  }
}
