package shinline.cli.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import shinline.cli.Sets;
import shinline.cli.outcome.ClipReport;
import shinline.cli.picture.Moment;
import shinline.cli.picture.RepPicture;
import shinline.cli.picture.RepPictures;
import shinline.cli.text.Units;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.TempoReading;

/** A made-up set with a curve, so that pages of any length can be drawn without a clip. */
final class ReportSets {
  private static final double REP_S = 4;
  private static final double FPS = 15;

  private ReportSets() {}

  /**
   * @param faults the faults of every second rep
   */
  static ClipReport.Measured set(String fileName, int reps, FlagKind... faults) {
    ClipReport.Measured model = Sets.measured(fileName);
    SetResult set =
        Sets.set(
            model.set().setUp(),
            model.set().target(),
            IntStream.rangeClosed(1, reps).mapToObj(n -> rep(n, faults)).toList(),
            Map.of(),
            Optional.empty(),
            new SetSummary(reps, Optional.empty()),
            series(reps));
    return new ClipReport.Measured(model.clip(), set, List.of());
  }

  /** A set in which every rep has the faults, and misses its target. */
  static ClipReport.Measured faulty(String fileName, int reps, FlagKind... faults) {
    ClipReport.Measured report = set(fileName, 2 * reps, faults);
    SetResult all = report.set();
    List<RepResult> bad = all.reps().stream().filter(r -> !r.flags().isEmpty()).toList();
    List<RepResult> numbered =
        IntStream.range(0, bad.size())
            .mapToObj(
                i ->
                    new RepResult(
                        i + 1,
                        bad.get(i).times(),
                        bad.get(i).tempo(),
                        bad.get(i).atBottom(),
                        bad.get(i).drive(),
                        false,
                        Sets.judged(i + 1, false),
                        bad.get(i).flags()))
            .toList();
    SetResult set =
        Sets.set(
            all.setUp(),
            all.target(),
            numbered,
            all.trend(),
            Optional.empty(),
            new SetSummary(reps, Optional.empty()),
            all.series());
    return new ClipReport.Measured(report.clip(), set, List.of());
  }

  /** Pictures of every fault with what was before and after, and of every bottom. */
  static RepPictures strips(ClipReport.Measured report) {
    byte[] jpeg = jpeg();
    List<RepPicture> all = new ArrayList<>();
    List<Moment> moments = new ArrayList<>();
    for (RepResult rep : report.set().reps()) {
      all.add(new RepPicture(rep.rep(), Optional.empty(), jpeg, 480, 560, "a bottom"));
      for (Flag flag : rep.flags()) {
        Optional<FlagKind> kind = Optional.of(flag.kind());
        all.add(new RepPicture(rep.rep(), kind, jpeg, 480, 600, "a fault"));
        for (Moment.When when : Moment.When.values()) {
          moments.add(
              new Moment(
                  rep.rep(),
                  flag.kind(),
                  when,
                  new RepPicture(rep.rep(), kind, jpeg, 260, 330, "beside it")));
        }
      }
    }
    return new RepPictures() {
      @Override
      public List<RepPicture> all() {
        return all;
      }

      @Override
      public List<Moment> moments() {
        return moments;
      }
    };
  }

  /** A picture for each fault and each bottom. */
  static RepPictures pictures(ClipReport.Measured report) {
    byte[] jpeg = jpeg();
    List<RepPicture> all =
        report.set().reps().stream()
            .flatMap(
                rep ->
                    java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(Optional.<FlagKind>empty()),
                        rep.flags().stream().map(f -> Optional.of(f.kind()))))
            .map(kind -> new RepPicture(2, kind, jpeg, 320, 240, "A \"drawn\" <frame> of rep 2"))
            .toList();
    return () -> all;
  }

  static String page(ClipReport.Measured report, RepPictures pictures) {
    StringWriter out = new StringWriter();
    try {
      new ReportPage(Units.METRIC).write(report, pictures, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static RepResult rep(int number, FlagKind... faults) {
    Map<Measure, Reading> atBottom = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      atBottom.put(measure, Reading.of(12, 1));
    }
    atBottom.put(Measure.REAR_KNEE_HEIGHT, Reading.missing(Gap.UNSEEN_AT_BOTTOM));
    double start = (number - 1) * REP_S + 1;
    boolean clean = number % 2 == 1;
    return new RepResult(
        number,
        new RepTimes(start, start + 1.5, start + 1.75, start + 2, start + 3),
        new TempoReading(
            Reading.of(1.5, 0.1), Reading.of(0.5, 0.1), Reading.of(1, 0.1), Reading.of(1, 0.1)),
        atBottom,
        new DriveReading(Reading.of(0.5, 0.02), Reading.of(0.9, 0.05)),
        false,
        Sets.judged(number, clean),
        clean
            ? List.of()
            : java.util.stream.Stream.of(faults)
                .map(k -> new Flag(k, start + 1.7, 20, 5, 2, MeasureUnit.CENTIMETRES, 0.9))
                .toList());
  }

  private static SeriesTable series(int reps) {
    int rows = (int) (FPS * (reps * REP_S + 2));
    int[] frames = IntStream.range(0, rows).map(i -> 2 * i).toArray();
    double[] times = IntStream.range(0, rows).mapToDouble(i -> i / FPS).toArray();
    Map<SeriesTable.Column, double[]> columns = new EnumMap<>(SeriesTable.Column.class);
    for (SeriesTable.Column column : SeriesTable.Column.values()) {
      double[] values = new double[rows];
      for (int i = 0; i < rows; i++) {
        values[i] = 10 - 12 * Math.cos(2 * Math.PI * (times[i] - 0.75) / REP_S);
      }
      values[rows / 2] = Double.NaN;
      columns.put(column, values);
    }
    return new SeriesTable(frames, times, columns, Map.of());
  }

  private static byte[] jpeg() {
    BufferedImage image = new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.ORANGE);
    pen.drawLine(0, 0, 320, 240);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpg", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
