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
import shinline.cli.crossing.TrackCrossing;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.cli.picture.ClipPictures;
import shinline.cli.picture.Face;
import shinline.cli.picture.RepPictures;
import shinline.cli.report.ReportPage;
import shinline.cli.text.Paint;
import shinline.cli.text.Typography;
import shinline.cli.text.Units;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipPart;
import shinline.vision.clip.FfmpegClipReader;
import shinline.vision.clip.Frame;
import shinline.vision.clip.FrameChoice;
import shinline.vision.pose.PersonDetector;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseModel;
import shinline.vision.pose.PoseTracker;
import shinline.vision.scene.CameraPath;

/**
 * Runs in a process of its own, with the options of the start script, and tells what it cost as
 * lines {@code name=value}.
 */
final class SpeedProbe {
  private static final double HEIGHT_M = 1.83;
  private static final double LOOKS_PER_S = 15;

  private SpeedProbe() {}

  /** {@code check CLIP FOLDER} or {@code parts CLIP}. */
  public static void main(String[] args) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path clip = Path.of(args[1]);
    if (args[0].equals("check")) {
      check(clip, Path.of(args[2]));
    } else {
      parts(clip);
    }
    System.out.flush();
    // The runtime of the model leaves threads behind.
    System.exit(0);
  }

  /** The whole command, page, pictures and tables included. */
  private static void check(Path clip, Path folder) throws IOException {
    Writer nowhere = Writer.nullWriter();
    CommandContext surroundings =
        new CommandContext(
            new PrintWriter(nowhere),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            Typography.RICH,
            Paint.NONE,
            CommandContext.Watched.PIPE);
    int code =
        Main.standard(surroundings)
            .run(
                "check",
                clip.toString(),
                "--height",
                HEIGHT_M + "m",
                "--target",
                "over-toe",
                "--out",
                folder.toString());
    tell("code", code);
    tell("coreS", coreS());
    tell("peakMb", peakMb());
  }

  private static double coreS() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
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

  /** The stages one after another on one thread, so that each has its own core time. */
  private static void parts(Path file) throws IOException {
    double read = threadS();
    int pictures = read(file, stamp -> true);
    tell("pictures", pictures);
    tell("allPicturesS", threadS() - read);
    double[] due = {0};
    FrameChoice looks =
        stamp -> {
          boolean wanted = stamp.timeS() >= due[0] - 1e-6;
          due[0] = wanted ? stamp.timeS() + 1 / LOOKS_PER_S : due[0];
          return wanted;
        };
    double decode = threadS();
    tell("looks", read(file, looks));
    tell("decodeS", threadS() - decode);
    due[0] = 0;
    double load = threadS();
    try (PersonDetector detector = PersonDetector.open();
        PoseEstimator pose = PoseTracker.open(PoseModel.HEAVY, detector);
        Clip clip = open(file, looks)) {
      tell("loadS", threadS() - load);
      TrackCrossing crossing = new TrackCrossing(clip.info().widthPx(), clip.info().heightPx());
      double poseS = 0;
      for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
        double start = threadS();
        crossing.add(
            f.get().index(), f.get().timeS(), pose.track(f.get().image(), f.get().timeS()));
        poseS += threadS() - start;
      }
      tell("poseS", poseS);
      double analysis = threadS();
      new SetAnalysis(CalibrationFile.shipped(PoseModel.HEAVY))
          .measure(
              crossing.track(CameraPath.still()), options().request(), ClipObservations.none());
      tell("analysisS", threadS() - analysis);
    }
    ClipReport report = new ClipCheck().check(file, options(), Progress.silent());
    ClipReport.Measured measured = (ClipReport.Measured) report;
    double drawn = threadS();
    long wall = System.nanoTime();
    RepPictures drawings =
        ClipPictures.of(file, measured, OptionalDouble.empty(), Units.METRIC, Face.SHOWN);
    new ReportPage(Units.METRIC).write(measured, drawings, Writer.nullWriter());
    tell("pageS", threadS() - drawn);
    tell("pageWallS", (System.nanoTime() - wall) / 1e9);
  }

  private static CheckOptions options() {
    SetRequest request =
        SetRequest.of(Target.preset(ShinPreset.OVER_TOE)).withAthleteHeightM(HEIGHT_M);
    return new CheckOptions(
        request, PoseModel.HEAVY, OptionalDouble.empty(), ClipPart.WHOLE, Optional.empty());
  }

  private static int read(Path file, FrameChoice choice) {
    try (Clip clip = open(file, choice)) {
      int read = 0;
      while (clip.next().isPresent()) {
        read++;
      }
      return read;
    }
  }

  private static Clip open(Path file, FrameChoice choice) {
    return new FfmpegClipReader()
        .open(file, ClipOptions.defaults(), choice)
        .fold(
            opened -> opened.clip(),
            refused -> {
              throw new AssertionError(refused.toString());
            });
  }

  private static double threadS() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }

  private static void tell(String name, double value) {
    System.out.println(name + "=" + value);
  }
}
