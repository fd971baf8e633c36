package shinline.cli.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shinline.cli.advice.GivenAdvice;
import shinline.cli.check.CheckOptions;
import shinline.cli.finding.ClipFinding;
import shinline.cli.finding.ClipFindings;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.outcome.Progress;
import shinline.cli.record.AthleteName;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
import shinline.cli.record.WrittenFiles;
import shinline.cli.sheet.PlannedSet;
import shinline.cli.sheet.SessionSheet;
import shinline.cli.team.AthleteSession;
import shinline.cli.team.SessionView;
import shinline.cli.team.SetOutcome;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advisor;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/**
 * One pass over a folder and its sheet: every clip is measured or taken from what was found before,
 * its set recorded, and the pages written. A clip that goes wrong stops nothing.
 *
 * <p>One clip at a time: a check looks, decodes and measures on as many cores as there are.
 */
public final class SessionRun {
  private final SessionFolder folder;
  private final ClipFindings findings;
  private final RecordStore store;
  private final Ladder ladder;
  private final SessionPages pages;
  private final Clock clock;
  private final SessionListener listener;

  SessionRun(
      SessionFolder folder,
      ClipFindings findings,
      RecordStore store,
      Ladder ladder,
      SessionPages pages,
      Clock clock,
      SessionListener listener) {
    this.folder = folder;
    this.findings = findings;
    this.store = store;
    this.ladder = ladder;
    this.pages = pages;
    this.clock = clock;
    this.listener = listener;
  }

  /** Whether a clip that a row names and the folder lacks is still to come. */
  enum Missing {
    WRONG,
    STILL_TO_COME
  }

  /**
   * @param clips of the folder, those that are whole
   * @return the worst that happened
   */
  ExitCode pass(SessionSheet sheet, List<Path> clips, Missing missing) {
    return new Pass(sheet, clips, missing, Work.MEASURE_AND_RECORD).run();
  }

  /** Writes the pages of what was found before; nothing is measured or recorded. */
  void show(SessionSheet sheet, List<Path> clips) {
    new Pass(sheet, clips, Missing.STILL_TO_COME, Work.SHOW_WHAT_IS_KNOWN).run();
  }

  private enum Work {
    MEASURE_AND_RECORD,
    SHOW_WHAT_IS_KNOWN
  }

  /** One pass, with what it has found so far. */
  private final class Pass {
    private final SessionSheet sheet;
    private final List<Path> clips;
    private final Missing missing;
    private final Work work;
    private final SessionRecord record = new SessionRecord(store);
    private final List<SetOutcome> outcomes = new ArrayList<>();
    private final List<SessionView.Unclaimed> unclaimed = new ArrayList<>();
    private final List<SessionView.Trouble> troubles = new ArrayList<>();
    private final Set<Path> named = new HashSet<>();
    private final TimeLeft timeLeft;
    private ExitCode worst = ExitCode.MEASURED;
    private int clipNumber;

    Pass(SessionSheet sheet, List<Path> clips, Missing missing, Work work) {
      this.sheet = sheet;
      this.clips = clips;
      this.missing = missing;
      this.work = work;
      timeLeft = new TimeLeft(clips, clock);
    }

    ExitCode run() {
      sheet.notes().forEach(listener::complain);
      for (String problem : sheet.problems()) {
        trouble(ExitCode.USAGE, Words.say("session.sheet"), problem, Words.say("session.sheet.do"));
      }
      sheet.sets().forEach(this::row);
      for (Path clip : clips) {
        if (!named.contains(clip)) {
          finding(clip, SetDefaults.unclaimed())
              .ifPresent(
                  finding -> {
                    unclaimed.add(new SessionView.Unclaimed(SessionFolder.fileName(clip), finding));
                    told(clip, finding);
                  });
        }
      }
      SessionView view = view();
      write(view);
      noteFiles();
      for (SessionView.Trouble trouble : troubles) {
        listener.complain(
            Words.say("team.trouble", trouble.what(), trouble.reason(), trouble.toDo()));
      }
      return worst;
    }

    private void row(PlannedSet planned) {
      Optional<Path> clip = planned.clip().flatMap(name -> SessionFolder.find(clips, name));
      clip.ifPresent(named::add);
      try {
        if (planned.clip().isPresent() && clip.isEmpty() && missing == Missing.STILL_TO_COME) {
          outcomes.add(
              new SetOutcome(
                  planned,
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  SetOutcome.OnRecord.NOT_RECORDED,
                  List.of()));
          return;
        }
        LocalDate day =
            clip.flatMap(c -> SessionFolder.day(c, clock.getZone()))
                .orElseGet(() -> LocalDate.now(clock));
        take(new SetDefaults(sheet, ladder, new RecordView(store.read())).fill(planned, clip, day));
      } catch (CoachException e) {
        trouble(
            e.exitCode(),
            Words.say("session.sheet"),
            String.valueOf(e.getMessage()),
            Words.say("session.sheet.do"));
      }
    }

    /** A record that cannot be written to must not cost the other clips their measuring. */
    private void take(ReadySet set) {
      try {
        outcomes.add(outcome(set));
      } catch (CoachException e) {
        trouble(
            e.exitCode(),
            what(set.planned()),
            String.valueOf(e.getMessage()),
            Words.say("session.failed-write.do"));
      }
    }

    private static String what(PlannedSet planned) {
      return planned.clip().orElse(Words.say("session.by-eye", planned.row()));
    }

    private SetOutcome outcome(ReadySet set) {
      Optional<ClipFinding> finding = set.clip().flatMap(c -> finding(c, set.options()));
      if (set.planned().clip().isPresent() && set.clip().isEmpty()) {
        finding = Optional.of(notThere());
      }
      List<String> notes = new ArrayList<>();
      Optional<SetCounts> measured = finding.flatMap(ClipFinding::counts);
      Optional<SetEntry> entry = measured.or(set::byEye).map(set::entry);
      SetOutcome.OnRecord onRecord = SetOutcome.OnRecord.NOT_RECORDED;
      if (entry.isPresent()) {
        SessionRecord.Kept kept = kept(set, entry.get(), finding);
        onRecord = kept.state();
        kept.note().ifPresent(notes::add);
      }
      measured.ifPresent(counts -> compare(set, counts, notes));
      finding
          .flatMap(ClipFinding::shownLeg)
          .filter(leg -> leg != set.planned().leg())
          .ifPresent(
              leg ->
                  notes.add(
                      Words.say(
                          "session.other-leg",
                          shinline.cli.advice.AdviceWords.leg(leg),
                          shinline.cli.advice.AdviceWords.leg(set.planned().leg()))));
      SetOutcome outcome =
          new SetOutcome(
              set.planned(),
              entry,
              finding,
              set.clip().flatMap(SessionFolder::written),
              onRecord,
              notes);
      tell(outcome);
      return outcome;
    }

    private SessionRecord.Kept kept(ReadySet set, SetEntry entry, Optional<ClipFinding> finding) {
      if (work == Work.SHOW_WHAT_IS_KNOWN) {
        return new SessionRecord.Kept(SetOutcome.OnRecord.THERE_BEFORE, Optional.empty());
      }
      return finding.flatMap(ClipFinding::counts).isPresent()
          ? record.measured(set, entry, finding.orElseThrow().measured())
          : record.byEye(set, entry);
    }

    private static void compare(ReadySet set, SetCounts counts, List<String> notes) {
      set.planned()
          .seen()
          .doneReps()
          .filter(done -> done != counts.reps())
          .ifPresent(done -> notes.add(Words.say("session.other-reps", done, counts.reps())));
    }

    /** Empty only where nothing is to be measured and nothing was found before. */
    private Optional<ClipFinding> finding(Path clip, CheckOptions options) {
      clipNumber++;
      try {
        ClipFindings.Key key = findings.key(clip, options);
        Optional<ClipFinding> before = findings.before(key);
        if (before.isPresent() || work == Work.SHOW_WHAT_IS_KNOWN) {
          timeLeft.skip(clip);
          return before;
        }
        Progress progress =
            listener.measuring(
                timeLeft.label(clipNumber, Math.max(clips.size(), clipNumber), clip));
        try {
          return Optional.of(
              findings.measure(clip, key, options, cause -> failed(clip, cause), progress));
        } finally {
          progress.end();
          timeLeft.done(clip);
          // What is there so far can be looked at, and a run that is stopped here leaves pages.
          write(view());
        }
      } catch (IOException e) {
        return Optional.of(
            ClipFinding.without(
                ClipFinding.State.UNREADABLE,
                Words.say("session.clip-closed"),
                Words.say("session.clip-closed.do")));
      }
    }

    private ClipFinding failed(Path clip, Throwable cause) {
      listener.fault(SessionFolder.fileName(clip), cause);
      return ClipFinding.without(
          ClipFinding.State.FAILED, Words.say("session.failed"), Words.say("session.failed.do"));
    }

    private ClipFinding notThere() {
      return ClipFinding.without(
          ClipFinding.State.UNREADABLE,
          Words.say("session.not-there"),
          Words.say("session.not-there.do"));
    }

    private void tell(SetOutcome set) {
      String what = what(set.planned());
      if (set.finding().isPresent() && set.finding().get().state() != ClipFinding.State.MEASURED) {
        trouble(what, set.finding().get());
      }
      boolean toldBefore =
          missing == Missing.STILL_TO_COME && set.onRecord() == SetOutcome.OnRecord.THERE_BEFORE;
      set.entry()
          .filter(e -> !toldBefore)
          .ifPresent(
              e ->
                  listener.say(
                      Words.say(
                          "session.set",
                          what,
                          set.athlete().written(),
                          shinline.cli.advice.AdviceWords.leg(set.leg()),
                          e.counts().cleanReps(),
                          e.counts().judged(),
                          Words.of(set.onRecord(), "name"))));
      set.notes().forEach(n -> listener.complain(Words.say("session.note", what, n)));
    }

    private void told(Path clip, ClipFinding finding) {
      if (finding.state() == ClipFinding.State.MEASURED) {
        listener.say(
            Words.say("session.unclaimed", SessionFolder.fileName(clip), finding.headline()));
      } else {
        trouble(SessionFolder.fileName(clip), finding);
      }
    }

    private void trouble(String what, ClipFinding finding) {
      trouble(finding.state().exitCode(), what, finding.headline(), finding.toDo().orElse(""));
    }

    private void trouble(ExitCode code, String what, String reason, String toDo) {
      worst = worst.worse(code);
      troubles.add(new SessionView.Trouble(what, reason, capital(toDo)));
    }

    private static String capital(String text) {
      return text.isEmpty()
          ? text
          : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private SessionView view() {
      RecordView now = new RecordView(store.read());
      Advisor advisor = new Advisor(ladder);
      LocalDate today = LocalDate.now(clock);
      List<AthleteSession> athletes = new ArrayList<>();
      for (AthleteName name : names()) {
        AthleteRecord known = now.of(name);
        athletes.add(
            new AthleteSession(
                name,
                outcomes.stream().filter(o -> o.athlete().sameAs(name)).toList(),
                new GivenAdvice(
                    name, advisor.advise(known.history(), today), known.overruleInForce(today))));
      }
      return new SessionView(
          SessionFolder.fileName(folder.path().toAbsolutePath().normalize()),
          findings.folder(),
          store.folder().origin(),
          athletes,
          troubles,
          unclaimed);
    }

    /** Everybody in the athletes' table or in a row. */
    private List<AthleteName> names() {
      Map<String, AthleteName> names = new LinkedHashMap<>();
      sheet.athletes().forEach(a -> names.putIfAbsent(a.name().key(), a.name()));
      sheet.sets().forEach(s -> names.putIfAbsent(s.athlete().key(), s.athlete()));
      return List.copyOf(names.values());
    }

    private void write(SessionView view) {
      try {
        pages.write(view);
      } catch (CoachException e) {
        listener.complain(String.valueOf(e.getMessage()));
        worst = worst.worse(e.exitCode());
      }
    }

    private void noteFiles() {
      WrittenFiles written = new WrittenFiles(store.folder());
      try {
        for (SetOutcome set : outcomes) {
          for (ClipFinding finding : set.finding().stream().toList()) {
            for (Path file : findings.written(finding)) {
              if (Files.exists(file)) {
                written.note(set.athlete(), file);
              }
            }
            Optional<Path> best = findings.best(finding).filter(Files::exists);
            Optional<String> digest = finding.measured().sha256();
            if (best.isPresent() && digest.isPresent()) {
              written.noteBottom(set.athlete(), best.get(), digest.get());
            }
          }
        }
        if (pages.all().stream().allMatch(Files::exists)) {
          pages.note(written, names());
        }
      } catch (IOException e) {
        listener.complain(Words.say("session.not-noted", store.folder().path()));
        worst = worst.worse(ExitCode.USAGE);
      }
    }
  }
}
