package shinline.cli.session;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import shinline.cli.check.CheckOptions;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.AthleteName;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.Entry;
import shinline.cli.record.RecordView;
import shinline.cli.sheet.ListedAthlete;
import shinline.cli.sheet.PlannedSet;
import shinline.cli.sheet.SessionSheet;
import shinline.cli.targetfile.TargetFile;
import shinline.cli.text.Length;
import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.target.Target;
import shinline.metrics.track.ToldLegs;
import shinline.metrics.training.Asked;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;
import shinline.vision.clip.ClipPart;
import shinline.vision.pose.PoseModel;

/**
 * Fills in what a row leaves out: from the athlete's last sets, the athletes' table, the ladder.
 */
final class SetDefaults {
  private static final SetCounts NONE = SetCounts.byHand(0, 0);

  private final SessionSheet sheet;
  private final Ladder ladder;
  private final RecordView record;

  SetDefaults(SessionSheet sheet, Ladder ladder, RecordView record) {
    this.sheet = sheet;
    this.ladder = ladder;
    this.record = record;
  }

  /**
   * @param fileDate of the clip, or today
   * @throws CoachException naming row and column, when what was asked cannot be understood
   */
  ReadySet fill(PlannedSet planned, Optional<Path> clip, LocalDate fileDate) {
    AthleteRecord known = record.of(planned.athlete());
    LocalDate date = planned.date().orElse(fileDate);
    Optional<SetEntry> last =
        known.history().workSets().stream()
            .map(RecordedSet::entry)
            .filter(e -> !e.date().isAfter(date))
            .reduce((a, b) -> b);
    String step =
        planned
            .work()
            .step()
            .or(() -> last.map(SetEntry::step))
            .or(() -> sheet.athlete(planned.athlete()).flatMap(ListedAthlete::startStep))
            .or(() -> known.history().profile().startStep())
            .orElse(ladder.first().id());
    Optional<Step> rung = ladder.step(step);
    if (rung.isEmpty()) {
      throw wrong(
          planned,
          "step",
          step,
          ladder.steps().stream().map(Step::id).collect(Collectors.joining(", ")));
    }
    Asked asked = asked(planned, rung.get(), last.filter(e -> e.step().equals(step)));
    SetEntry entry =
        new SetEntry(
            date,
            planned.leg(),
            step,
            planned.work().purpose(),
            asked,
            load(planned, rung.get()),
            planned.seen().pain(),
            NONE);
    return new ReadySet(planned, clip, entry, options(planned, asked));
  }

  private static Asked asked(PlannedSet planned, Step step, Optional<SetEntry> last) {
    PlannedSet.Work work = planned.work();
    int reps =
        work.reps().or(() -> last.map(e -> e.asked().reps())).orElse(step.firstScheme().reps());
    int sets =
        work.sets()
            .orElse(
                step.schemes().stream()
                    .filter(s -> s.reps() == reps)
                    .findFirst()
                    .map(Scheme::sets)
                    .orElse(step.firstScheme().sets()));
    return new Asked(
        OptionalInt.of(sets),
        reps,
        work.target().or(() -> last.map(e -> e.asked().target())).orElse(step.firstTarget()),
        work.tempo().or(() -> Optional.of(step.tempo()).filter(t -> !t.isBlank())),
        work.depth());
  }

  private static Optional<TrainingLoad> load(PlannedSet planned, Step step) {
    PlannedSet.Carried carried = planned.carried();
    if (carried.load().filter(m -> !m.isZero()).isEmpty()) {
      return Optional.empty();
    }
    LoadKind kind = carried.kind().orElse(step.load().kind());
    if (kind == LoadKind.NONE) {
      throw CoachException.usage(Words.say("session.load-kind", planned.row(), step.id()));
    }
    return Optional.of(new TrainingLoad(carried.load().get(), kind, carried.vest()));
  }

  private CheckOptions options(PlannedSet planned, Asked asked) {
    SetRequest request =
        SetRequest.of(target(planned, asked))
            .withLegs(ToldLegs.NOTHING.withFrontLeg(planned.leg()));
    Optional<Length> height =
        planned
            .lengths()
            .height()
            .or(() -> sheet.athlete(planned.athlete()).flatMap(ListedAthlete::height))
            .or(() -> heightOnRecord(planned.athlete()));
    if (height.isPresent()) {
      request = request.withAthleteHeightM(height.get().metres());
    }
    if (planned.lengths().bench().isPresent()) {
      request = request.withBenchHeightM(planned.lengths().bench().get().metres());
    }
    return options(request);
  }

  /** Of a clip that nobody is named for. */
  static CheckOptions unclaimed() {
    return options(SetRequest.plain());
  }

  private static CheckOptions options(SetRequest request) {
    return new CheckOptions(
        request, PoseModel.HEAVY, OptionalDouble.empty(), ClipPart.WHOLE, Optional.empty());
  }

  private Optional<Length> heightOnRecord(AthleteName athlete) {
    return record.linesOf(athlete).stream()
        .filter(l -> l.kind().equals(Entry.ATHLETE))
        .map(l -> l.json().path("heightCm"))
        .filter(n -> n.isNumber() && n.doubleValue() > 0)
        .map(n -> new Length(n.doubleValue() / 100))
        .reduce((a, b) -> b);
  }

  /** Words and notation are those of a target file. */
  private static Target target(PlannedSet planned, Asked asked) {
    Target shin = part(planned, "target", "shin", asked.target());
    Target depth = part(planned, "depth", "depth", asked.depth().orElse("full"));
    Target tempo =
        asked.tempo().filter(SetDefaults::hasPhases).isPresent()
            ? part(planned, "tempo", "tempo", asked.tempo().get())
            : Target.none();
    return new Target(
        shin.shin(), depth.depth(), tempo.tempo(), Optional.empty(), Target.Margin.standard());
  }

  /** "X" alone asks for all the speed there is, which no number of seconds says. */
  private static boolean hasPhases(String tempo) {
    return !tempo.strip().equalsIgnoreCase("x");
  }

  private static Target part(PlannedSet planned, String column, String field, String text) {
    String quoted = "'" + text.strip().replace("'", "''") + "'";
    return TargetFile.parse(field + ": " + quoted + "\n")
        .fold(
            target -> target,
            refused -> {
              throw wrong(planned, column, text, refused.problems().get(0).whatToDo());
            });
  }

  private static CoachException wrong(
      PlannedSet planned, String column, String text, String choices) {
    return CoachException.usage(
        Words.say("sheet.wrong", Words.say("sheet.row", planned.row()), column, text, choices));
  }
}
