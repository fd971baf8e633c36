package shinline.cli.speed;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.cli.Main;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipCheck;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.cli.picture.ClipPictures;
import shinline.cli.picture.Face;
import shinline.cli.picture.RepPictures;
import shinline.cli.place.PreparedChecker;
import shinline.cli.place.ProgramFolder;
import shinline.cli.report.ReportPage;
import shinline.cli.text.Paint;
import shinline.cli.text.Typography;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.vision.clip.ClipPart;
import shinline.vision.clip.FrameChoice;
import shinline.vision.library.Cores;
import shinline.vision.pose.PoseModel;
import shinline.vision.scene.CameraPath;

/**
 * Runs in a process of its own, with the options of the start script, and tells what it cost as
 * lines {@code name=value}.
 */
final class SpeedProbe {
  private static final double HEIGHT_M = 1.83;

  private SpeedProbe() {}

  /**
   * {@code decode CLIP THREADS}, {@code check CLIP MODEL FOLDER}, {@code pose CLIP MODEL} or {@code
   * parts CLIP}.
   */
  public static void main(String[] args) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path clip = Path.of(args[1]);
    switch (args[0]) {
      case "decode" -> decode(clip, Integer.parseInt(args[2]));
      case "check" -> check(clip, PoseModel.valueOf(args[2]), Path.of(args[3]));
      case "pose" -> pose(clip, PoseModel.valueOf(args[2]));
      default -> parts(clip);
    }
    System.out.flush();
    // The runtime of the model leaves threads behind.
    System.exit(0);
  }

  private static void decode(Path clip, int threads) throws IOException {
    DecodeAlone all = DecodeAlone.read(clip, threads);
    tell("wallS", all.wallS());
    tell("pictures", all.pictures());
    tell("heightPx", all.heightPx());
    tell("fps", all.fps());
    tell("playsS", all.playsS());
  }

  /** The whole command, page, pictures and tables included, as on a terminal. */
  private static void check(Path clip, PoseModel model, Path folder) throws IOException {
    ThreadTimes threads = ThreadTimes.watch();
    CommandContext surroundings =
        new CommandContext(
            new PrintWriter(Writer.nullWriter()),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            Typography.RICH,
            Paint.NONE,
            CommandContext.Watched.TERMINAL);
    // As Main begins a check.
    PreparedChecker checker = new PreparedChecker(new ClipCheck(), ProgramFolder.ofUser());
    checker.beginEarly();
    int code =
        new Main(surroundings, checker)
            .run(
                "check",
                clip.toString(),
                "--height",
                HEIGHT_M + "m",
                "--target",
                "over-toe",
                "--model",
                Words.of(model, "name"),
                "--out",
                folder.toString());
    tell("code", code);
    tell("coreS", processCoreS());
    tell("watchS", threads.coreS("watch"));
    tell("readS", threads.coreS("clip-read-ahead"));
    tell("mainS", threads.coreS("main"));
    tell("peakMb", peakMb());
  }

  private static void pose(Path clip, PoseModel model) {
    PoseAlone alone = PoseAlone.look(clip, model);
    tell("sampled", alone.sampled());
    tell("looks", alone.looks());
    tell("loadS", alone.loadS());
    tell("coreS", alone.coreS());
    tell("wallS", alone.wallS());
    double analysis = threadS();
    new SetAnalysis(CalibrationFile.shipped(model))
        .measure(
            alone.people().ofMover(CameraPath.still()),
            options().request(),
            ClipObservations.none());
    tell("analysisS", threadS() - analysis);
  }

  /** What needs neither a process of its own nor the pose model alone. */
  private static void parts(Path file) throws IOException {
    Reading.wallS(file, 1, PoseAlone.sampling(PoseModel.HEAVY));
    tell("readS", Reading.wallS(file, 1, PoseAlone.sampling(PoseModel.HEAVY)));
    tell("readOnFourS", Reading.wallS(file, onFour(), PoseAlone.sampling(PoseModel.HEAVY)));
    tell("convertAllS", Reading.wallS(file, 1, FrameChoice.ALL));
    ClipReport report = new ClipCheck().check(file, options(), Progress.silent());
    ClipReport.Measured measured = (ClipReport.Measured) report;
    double drawn = threadS();
    RepPictures drawings =
        ClipPictures.of(file, measured, OptionalDouble.empty(), Units.METRIC, Face.SHOWN);
    new ReportPage(Units.METRIC).write(measured, drawings, Writer.nullWriter());
    tell("pageS", threadS() - drawn);
  }

  private static int onFour() {
    return new Cores(FourCores.COUNT).forDecoding();
  }

  private static CheckOptions options() {
    SetRequest request =
        SetRequest.of(Target.preset(ShinPreset.OVER_TOE)).withAthleteHeightM(HEIGHT_M);
    return new CheckOptions(
            request, PoseModel.HEAVY, OptionalDouble.empty(), ClipPart.WHOLE, Optional.empty())
        .withPictures();
  }

  private static double processCoreS() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
  }

  private static double threadS() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }

  /** Most memory the process ever held in the machine; 0 where the system does not tell. */
  private static double peakMb() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.isReadable(status)) {
      return 0;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("VmHWM:"))
        .map(line -> line.replaceAll("\\D", ""))
        .mapToDouble(kb -> Double.parseDouble(kb) / 1024)
        .findFirst()
        .orElse(0);
  }

  private static void tell(String name, double value) {
    System.out.println(name + "=" + value);
  }
}
