package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.training.AthleteProfile;
import shinline.metrics.training.Dismissals;
import shinline.metrics.training.Mark;
import shinline.metrics.training.Place;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetEntry;
import shinline.metrics.training.TrainingHistory;

/** The record with corrections and reviews applied. */
public final class RecordView {
  private final List<RecordLine> lines;
  private final Map<String, Dismissals> dismissals;
  private final Corrections corrections;

  public RecordView(RecordLines record) {
    corrections = new Corrections(record);
    lines =
        record.lines().stream()
            .filter(l -> !l.kind().equals(Entry.CORRECTION))
            .map(corrections::applyTo)
            .toList();
    dismissals = dismissals(lines);
  }

  /** A line as it stands now. */
  public RecordLine now(RecordLine line) {
    return corrections.applyTo(line);
  }

  /** Every line but corrections, as it stands now, in order. */
  public List<RecordLine> lines() {
    return lines;
  }

  /** Those of one athlete. */
  public List<RecordLine> linesOf(AthleteName athlete) {
    return lines.stream().filter(l -> l.athlete().filter(athlete::sameAs).isPresent()).toList();
  }

  /** Names on record, each as first written, in the order of their key. */
  public List<AthleteName> athletes() {
    Map<String, AthleteName> names = new LinkedHashMap<>();
    lines.stream()
        .flatMap(l -> l.athlete().stream())
        .forEach(name -> names.putIfAbsent(name.key(), name));
    return names.values().stream().sorted(Comparator.comparing(AthleteName::key)).toList();
  }

  /** The set of the same clip already on record for this athlete, leg and date. */
  Optional<String> sameClip(Entry set) {
    Optional<String> digest = digest(set.fields());
    return set.athlete().stream()
        .flatMap(a -> linesOf(a).stream())
        .filter(l -> l.kind().equals(Entry.SET))
        .filter(l -> digest.isPresent() && digest(l.json()).equals(digest))
        .filter(l -> Json.text(l.json(), "date").equals(Json.text(set.fields(), "date")))
        .filter(l -> Json.text(l.json(), "leg").equals(Json.text(set.fields(), "leg")))
        .map(RecordLine::id)
        .findFirst();
  }

  private static Optional<String> digest(ObjectNode line) {
    return Json.text(line.path("result"), "sha256").map(d -> d.toLowerCase(Locale.ROOT));
  }

  /** What was measured in each set of an athlete, by the id of its line. */
  public Map<String, MeasuredSet> measured(AthleteName athlete) {
    Map<String, MeasuredSet> found = new HashMap<>();
    linesOf(athlete).stream()
        .filter(l -> l.kind().equals(Entry.SET))
        .forEach(l -> found.put(l.id(), MeasuredSetReader.read(l)));
    return found;
  }

  public AthleteRecord of(AthleteName asked) {
    Reading reading = new Reading(asked);
    linesOf(asked).forEach(reading::take);
    return reading.result();
  }

  private static Map<String, Dismissals> dismissals(List<RecordLine> lines) {
    Map<String, Map<Dismissals.Dismissed, Boolean>> bySet = new HashMap<>();
    for (RecordLine line : lines) {
      if (!line.kind().equals(Entry.REVIEW)) {
        continue;
      }
      Optional<String> flag = Json.text(line.json(), "flag");
      JsonNode rep = line.json().path("rep");
      if (line.of().isPresent() && flag.isPresent()) {
        // The last word on a flag counts.
        bySet
            .computeIfAbsent(line.of().get(), id -> new LinkedHashMap<>())
            .put(
                new Dismissals.Dismissed(
                    flag.get(),
                    rep.canConvertToInt() ? OptionalInt.of(rep.intValue()) : OptionalInt.empty()),
                line.json().path("dismissed").asBoolean());
      }
    }
    Map<String, Dismissals> found = new HashMap<>();
    bySet.forEach(
        (id, flags) ->
            found.put(
                id,
                new Dismissals(
                    flags.entrySet().stream()
                        .filter(Map.Entry::getValue)
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toCollection(LinkedHashSet::new)))));
    return found;
  }

  /** One athlete's lines being read. */
  private final class Reading {
    private AthleteName name;
    private boolean named;
    private final ObjectNode profile = Json.object();
    private int profileLine;
    private final List<RecordedSet> sets = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Overrule> overrules = new ArrayList<>();
    private final List<LineProblem> problems = new ArrayList<>();

    Reading(AthleteName asked) {
      name = asked;
    }

    void take(RecordLine line) {
      if (!named) {
        name = line.athlete().orElse(name);
        named = true;
      }
      try {
        switch (line.kind()) {
          case Entry.SET -> set(line);
          case Entry.ATHLETE -> {
            profile.setAll(line.json());
            profileLine = line.number();
          }
          case Entry.CLEARANCE -> mark(line, new Mark.Cleared());
          case Entry.GATE -> mark(line, new Mark.GatePassed(word(line, "gate")));
          case Entry.RELEASE -> mark(line, new Mark.Released(word(line, "release")));
          case Entry.OVERRULE -> overrule(line);
          case Entry.REVIEW -> {} // taken in with its set
          default ->
              problems.add(new LineProblem(line.number(), Words.say("record.kind", line.kind())));
        }
      } catch (LineFields.Wrong wrong) {
        problems.add(
            new LineProblem(
                line.number(), Words.say("record.does-not-count", wrong.what(), line.id())));
      }
    }

    private void set(RecordLine line) {
      // Pain counts even where the rest of the line cannot be used.
      if (line.json().path("pain").asBoolean()) {
        mark(line, new Mark.PainFelt());
      }
      SetEntry entry = SetLineReader.read(line);
      Dismissals dismissed = dismissals.getOrDefault(line.id(), new Dismissals(Set.of()));
      sets.add(
          new RecordedSet(
              line.id(),
              line.number(),
              new SetEntry(
                  entry.date(),
                  entry.leg(),
                  entry.step(),
                  entry.purpose(),
                  entry.asked(),
                  entry.load(),
                  entry.pain(),
                  dismissed.applyTo(entry.counts(), SPOILING))));
    }

    private void mark(RecordLine line, Mark.Kind kind) {
      marks.add(new Mark(line.id(), new Place(date(line), line.number()), kind));
    }

    private LocalDate date(RecordLine line) {
      LineFields fields = new LineFields(line.json());
      return fields.need("date", fields.date("date"));
    }

    private String word(RecordLine line, String field) {
      LineFields fields = new LineFields(line.json());
      return fields.need(field, fields.text(field));
    }

    private void overrule(RecordLine line) {
      overrules.add(
          new Overrule(
              line.id(),
              date(line),
              word(line, "reason"),
              Json.text(line.json(), "instead").orElse("")));
    }

    AthleteRecord result() {
      AthleteProfile known = AthleteProfile.unknown();
      try {
        LineFields fields = new LineFields(profile);
        Optional<Integer> born = fields.count("birthYear");
        Optional<BigDecimal> mass = fields.decimal("massKg").filter(m -> m.signum() > 0);
        known =
            new AthleteProfile(
                born.isPresent() ? OptionalInt.of(born.get()) : OptionalInt.empty(),
                mass.map(m -> new Mass(m, MassUnit.KG)),
                fields.text("startStep"));
      } catch (LineFields.Wrong wrong) {
        problems.add(new LineProblem(profileLine, wrong.what()));
      }
      overrules.sort(Comparator.comparing(Overrule::date));
      return new AthleteRecord(
          name,
          new TrainingHistory(known, sets, marks),
          List.copyOf(overrules),
          List.copyOf(problems));
    }
  }

  /** Names of the kinds that make a rep not clean. */
  private static final Set<String> SPOILING =
      Arrays.stream(FlagKind.values())
          .filter(FlagKind::spoils)
          .map(FlagKind::jsonName)
          .collect(Collectors.toUnmodifiableSet());
}
