package shinline.cli.demo;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import shinline.cli.record.MeasuredSet;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordWriting;
import shinline.cli.record.SetLine;
import shinline.cli.words.Words;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.result.Measure;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;
import shinline.metrics.training.SetSource;

/** Writes the six weeks before the last day into the record, as sets counted by eye. */
final class PastWeeks {
  private static final LocalTime EVENING = LocalTime.of(18, 30);

  /** Invented as the numbers are: about what a clip of a good view would have, degrees and m/s. */
  private static final double ANGLE_PLUS_MINUS = 2.2;

  private static final double ANGLE_PLUS_MINUS_WITHIN = 1.1;
  private static final double SPEED_PLUS_MINUS = 0.03;

  private final RecordFolder record;
  private final LocalDate lastDay;
  private final ZoneId zone;

  PastWeeks(RecordFolder record, LocalDate lastDay, ZoneId zone) {
    this.record = record;
    this.lastDay = lastDay;
    this.zone = zone;
  }

  void write() {
    for (Story story : Squad.all()) {
      Map<String, String> about = new LinkedHashMap<>();
      about.put("heightCm", String.valueOf(story.heightCm()));
      about.put("massKg", String.valueOf(story.massKg()));
      about.put("note", Words.say("demo.note"));
      store(day(0)).append(RecordWriting.athlete(story.athlete(), about));
    }
    for (int week = 0; week < Story.WEEKS; week++) {
      for (Story story : Squad.all()) {
        for (Side leg : Side.values()) {
          for (int set = 1; set <= Story.SETS; set++) {
            store(day(week)).append(line(story, leg, week, set));
          }
        }
      }
    }
  }

  private LocalDate day(int week) {
    return lastDay.minusWeeks(Story.WEEKS - week);
  }

  private RecordStore store(LocalDate day) {
    return new RecordStore(record, Clock.fixed(day.atTime(EVENING).atZone(zone).toInstant(), zone));
  }

  private SetLine line(Story story, Side side, int week, int set) {
    Story.Leg leg = story.of(side);
    int notClean = set == Story.SETS ? leg.notClean().get(week) : 0;
    SetEntry entry =
        new SetEntry(
            day(week),
            side,
            story.step(),
            Purpose.WORK,
            new Asked(
                OptionalInt.of(Story.SETS),
                story.reps(),
                story.target(),
                Optional.of(story.tempo()),
                Optional.empty()),
            load(story, leg.loadKg().get(week)),
            Pain.NO,
            SetCounts.byHand(story.reps(), story.reps() - notClean));
    return new SetLine(
        story.athlete(),
        entry,
        Optional.of(String.valueOf(set)),
        Optional.of(Words.say("demo.note")),
        SetSource.BY_HAND,
        measured(story, leg, week));
  }

  private static Optional<TrainingLoad> load(Story story, int kg) {
    return kg == 0
        ? Optional.empty()
        : Optional.of(
            new TrainingLoad(
                Mass.of(String.valueOf(kg), MassUnit.KG), story.kind(), Optional.empty()));
  }

  private static MeasuredSet measured(Story story, Story.Leg leg, int week) {
    Map<String, MeasuredSet.BottomMean> bottom = new HashMap<>();
    bottom.put(Measure.SHIN.jsonName(), angle(leg.shinDeg().get(week)));
    bottom.put(Measure.THIGH.jsonName(), angle(leg.thighDeg().get(week)));
    Optional<Double> speed = Optional.of(leg.speedMps().get(week));
    boolean bar = story.kind().isBar();
    return new MeasuredSet(
        Optional.empty(),
        Optional.empty(),
        bottom,
        Optional.empty(),
        Optional.empty(),
        bar ? Optional.empty() : speed,
        bar ? speed : Optional.empty(),
        Map.of(bar ? "barSpeedMps" : "driveSpeedMps", SPEED_PLUS_MINUS),
        Map.of());
  }

  private static MeasuredSet.BottomMean angle(double deg) {
    return new MeasuredSet.BottomMean(
        deg, Optional.of(ANGLE_PLUS_MINUS), Optional.of(ANGLE_PLUS_MINUS_WITHIN));
  }
}
