package shinline.cli.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shinline.vision.library.Cores;
import shinline.vision.pose.PoseModel;

/**
 * What one clip cost, each run in a process of its own, one after another.
 *
 * @param words tells the clip apart, by what it is and never by its name
 * @param megabits a second, sound included
 * @param decodes alone, on one thread: before the first check, and after each
 * @param checks the whole check with each model, in their order
 */
record ClipCost(
    String words,
    double megabits,
    List<SpeedRun> decodes,
    Map<PoseModel, SpeedRun> checks,
    Optional<Parts> parts) {

  /** How much is measured. */
  enum Depth {
    WHOLE,
    PARTS
  }

  /**
   * @param poses the pose model alone on one thread
   * @param others parts that need no process of their own
   * @param poseOnFour the accurate pose model alone, a look shared as on four cores
   * @param decodeOnFour decoding alone, on as many threads as on four cores
   */
  record Parts(
      Map<PoseModel, SpeedRun> poses, SpeedRun others, SpeedRun poseOnFour, SpeedRun decodeOnFour) {

    static Parts measure(Path file) throws IOException, InterruptedException {
      Map<PoseModel, SpeedRun> poses = new EnumMap<>(PoseModel.class);
      for (PoseModel model : PoseModel.values()) {
        poses.put(model, SpeedRun.asOn(1, "pose", file, model.name()));
      }
      int threads = new Cores(FourCores.COUNT).forDecoding();
      return new Parts(
          poses,
          SpeedRun.of("parts", file),
          SpeedRun.asOn(FourCores.COUNT, "pose", file, PoseModel.HEAVY.name()),
          SpeedRun.of("decode", file, threads));
    }
  }

  static ClipCost measure(String what, Path file, Path folder, Depth depth)
      throws IOException, InterruptedException {
    SpeedRun decode = SpeedRun.of("decode", file, 1);
    List<SpeedRun> decodes = new ArrayList<>(List.of(decode));
    Map<PoseModel, SpeedRun> checks = new EnumMap<>(PoseModel.class);
    for (PoseModel model : PoseModel.values()) {
      checks.put(model, SpeedRun.of("check", file, model.name(), folder.resolve("out")));
      decodes.add(SpeedRun.of("decode", file, 1));
    }
    String words =
        String.format(
            Locale.ROOT,
            "%.0fp, %.0f a second, %s",
            decode.get("heightPx"),
            decode.get("fps"),
            what);
    return new ClipCost(
        words,
        8e-6 * Files.size(file) / decode.get("playsS"),
        decodes,
        checks,
        depth == Depth.PARTS ? Optional.of(Parts.measure(file)) : Optional.empty());
  }

  SpeedRun check(PoseModel model) {
    return checks.get(model);
  }

  /** What the film is, by decoding it. */
  SpeedRun decode() {
    return decodes.get(0);
  }

  /** Decoding alone, on one thread, in the mean of its runs. */
  double decodeS() {
    return meanS(decodes);
  }

  /**
   * How many times as long as decoding alone a check takes: decoding just before and just after it,
   * as a machine that does other things, too, is not as fast from one minute to the next.
   */
  double timesDecoding(PoseModel model) {
    int before = model.ordinal();
    return check(model).wallS() / meanS(decodes.subList(before, before + 2));
  }

  /** How many times as long as decoding alone. */
  double timesDecoding(double seconds) {
    return seconds / decodeS();
  }

  private static double meanS(List<SpeedRun> runs) {
    return runs.stream().mapToDouble(run -> run.get("wallS")).average().orElseThrow();
  }

  /** With the accurate model; of a clip whose parts were measured. */
  FourCores onFour() {
    Parts measured = parts.orElseThrow();
    return new FourCores(
        check(PoseModel.HEAVY).firstOutputS() + measured.poses().get(PoseModel.HEAVY).get("loadS"),
        measured.poseOnFour().get("wallS"),
        measured.others().get("readOnFourS"),
        check(PoseModel.HEAVY).get("watchS"),
        measured.poses().get(PoseModel.HEAVY).get("analysisS") + measured.others().get("pageS"));
  }
}
