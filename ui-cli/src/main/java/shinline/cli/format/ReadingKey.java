package shinline.cli.format;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;

/** The key of a reading in the result format, and where it stands in a result. */
record ReadingKey<T>(String name, Function<T, Reading> of) {
  static final List<ReadingKey<RepResult>> TEMPO =
      List.of(
          new ReadingKey<>("loweringS", r -> r.tempo().lowering()),
          new ReadingKey<>("holdS", r -> r.tempo().hold()),
          new ReadingKey<>("driveS", r -> r.tempo().drive()),
          new ReadingKey<>("topS", r -> r.tempo().top()));

  static final List<ReadingKey<RepResult>> AT_BOTTOM =
      Stream.of(Measure.values())
          .map(m -> new ReadingKey<RepResult>(m.jsonName(), r -> r.at(m)))
          .toList();

  static final List<ReadingKey<RepResult>> DRIVE =
      List.of(
          new ReadingKey<>("meanSpeedMps", r -> r.drive().meanSpeed()),
          new ReadingKey<>("peakSpeedMps", r -> r.drive().peakSpeed()));

  static final List<ReadingKey<BarReading>> BAR =
      List.of(
          new ReadingKey<>("meanSpeedMps", BarReading::meanSpeed),
          new ReadingKey<>("peakSpeedMps", BarReading::peakSpeed),
          new ReadingKey<>("strayCm", BarReading::strayCm),
          new ReadingKey<>("speedLossPct", BarReading::speedLossPct),
          new ReadingKey<>("trunkChangeDeg", BarReading::trunkChangeDeg));
}
