package shinline.metrics.advice;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import shinline.metrics.ladder.DumbbellRack;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.AthleteProfile;
import shinline.metrics.training.Mark;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Place;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;
import shinline.metrics.training.TrainingHistory;

/** One case of cases.txt, whose head explains how to read it. */
final class AdviceCase {
  final String name;
  String next = "";
  String earliest = "";
  final List<String> missing = new ArrayList<>();
  final List<String> lines = new ArrayList<>();
  LocalDate asOf = LocalDate.EPOCH;
  Ladder ladder = TestLadder.standard();

  private AthleteProfile profile = AthleteProfile.unknown();
  private final List<RecordedSet> sets = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private int written;

  /** Ids of the record lines that each line of the case wrote. */
  private final Map<Integer, List<String>> ids = new LinkedHashMap<>();

  private AdviceCase(String name) {
    this.name = name;
  }

  static List<AdviceCase> all() throws IOException {
    List<AdviceCase> cases = new ArrayList<>();
    for (String line : text().lines().toList()) {
      if (line.startsWith("case ")) {
        cases.add(new AdviceCase(line));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        cases.get(cases.size() - 1).read(line.strip().split("\\s+"));
      }
    }
    return cases;
  }

  private static String text() throws IOException {
    try (InputStream in = AdviceCase.class.getResourceAsStream("cases.txt")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  TrainingHistory history() {
    return new TrainingHistory(profile, sets, marks);
  }

  private void read(String[] words) {
    List<String> rest = Arrays.asList(words).subList(1, words.length);
    switch (words[0]) {
      case "why" -> {}
      case "set" -> set(rest);
      case "athlete" -> athlete(rest);
      case "dumbbells" ->
          ladder =
              TestLadder.withDumbbells(
                  new DumbbellRack(rest.stream().map(w -> load(w).orElseThrow().mass()).toList()));
      case "clearance" -> mark(rest.get(0), new Mark.Cleared());
      case "gate" -> mark(rest.get(0), new Mark.GatePassed("hip-flexor-range"));
      case "release" -> mark(rest.get(0), new Mark.Released("short-range"));
      case "as-of" -> asOf = LocalDate.parse(rest.get(0));
      case "next" -> next = String.join(" ", rest);
      case "earliest" -> earliest = rest.get(0);
      case "missing" -> missing.addAll(rest);
      case "lines" ->
          rest.forEach(n -> lines.addAll(Objects.requireNonNull(ids.get(Integer.valueOf(n)))));
      default -> throw new IllegalArgumentException(words[0]);
    }
  }

  private void athlete(List<String> rest) {
    for (String word : rest) {
      String value = word.substring(word.indexOf('=') + 1);
      profile =
          switch (word.substring(0, word.indexOf('='))) {
            case "mass" ->
                new AthleteProfile(
                    profile.birthYear(),
                    Optional.of(Mass.of(value, MassUnit.KG)),
                    profile.startStep());
            case "born" ->
                new AthleteProfile(
                    OptionalInt.of(Integer.parseInt(value)),
                    profile.bodyMass(),
                    profile.startStep());
            case "start" ->
                new AthleteProfile(profile.birthYear(), profile.bodyMass(), Optional.of(value));
            default -> throw new IllegalArgumentException(word);
          };
    }
  }

  private void mark(String date, Mark.Kind kind) {
    String id = newId(ids.size() + 1);
    marks.add(new Mark(id, new Place(LocalDate.parse(date), written), kind));
  }

  private String newId(int caseLine) {
    written++;
    String id = "line-" + written;
    ids.computeIfAbsent(caseLine, n -> new ArrayList<>()).add(id);
    return id;
  }

  private void set(List<String> words) {
    List<String> results = words.stream().filter(w -> w.matches("\\d+/\\d+(u\\d+)?")).toList();
    Purpose purpose =
        words.stream()
            .filter(w -> w.startsWith("purpose="))
            .map(w -> Purpose.of(w.substring("purpose=".length())).orElseThrow())
            .findFirst()
            .orElse(Purpose.WORK);
    Pain pain =
        words.contains("pain") ? Pain.YES : words.contains("no-pain") ? Pain.NO : Pain.NOT_ASKED;
    int caseLine = ids.size() + 1;
    for (Side leg : legs(words.get(1))) {
      for (String result : results) {
        SetEntry entry =
            new SetEntry(
                LocalDate.parse(words.get(0)),
                leg,
                words.get(2),
                purpose,
                asked(words.get(4), words.get(3)),
                load(words.get(5)),
                pain,
                counts(result));
        String id = newId(caseLine);
        sets.add(new RecordedSet(id, written, entry));
        if (pain == Pain.YES) {
          marks.add(new Mark(id, new Place(entry.date(), written), new Mark.PainFelt()));
        }
      }
    }
  }

  private static List<Side> legs(String word) {
    return word.equals("both")
        ? List.of(Side.LEFT, Side.RIGHT)
        : List.of(word.equals("left") ? Side.LEFT : Side.RIGHT);
  }

  private static Asked asked(String word, String target) {
    String[] parts = word.split("x");
    return new Asked(
        parts[0].equals("?") ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(parts[0])),
        Integer.parseInt(parts[1]),
        target,
        Optional.empty(),
        Optional.empty());
  }

  private static SetCounts counts(String word) {
    String[] parts = word.split("[/u]");
    int unclear = parts.length > 2 ? Integer.parseInt(parts[2]) : 0;
    return new SetCounts(
        Integer.parseInt(parts[1]),
        Optional.empty(),
        unclear,
        Integer.parseInt(parts[0]),
        Map.of(),
        List.of());
  }

  private static Optional<TrainingLoad> load(String word) {
    if (word.equals("none")) {
      return Optional.empty();
    }
    String[] vest = word.split("\\+");
    String[] kind = vest[0].split(":");
    MassUnit unit = MassUnit.of(kind[0].replaceAll("[0-9.]", "")).orElseThrow();
    return Optional.of(
        new TrainingLoad(
            Mass.of(kind[0].replaceAll("[a-z]", ""), unit),
            kind.length > 1 ? LoadKind.of(kind[1]).orElseThrow() : LoadKind.EACH_HAND,
            vest.length > 1 ? Optional.of(Mass.of(vest[1], unit)) : Optional.empty()));
  }

  /** A constant as the case writes it. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The answer as the case writes it. */
  static String text(Advice advice) {
    return Stream.concat(
            Stream.of(word(advice.decision())),
            advice.prescription().stream()
                .flatMap(
                    p ->
                        Stream.of(
                            p.step(),
                            p.target(),
                            p.scheme().sets() + "x" + p.scheme().reps(),
                            p.tempo().orElse("?"),
                            p.load().map(AdviceCase::text).orElse("none"))))
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  private static String text(TrainingLoad load) {
    String kind = load.kind() == LoadKind.EACH_HAND ? "" : ":" + load.kind().word();
    String vest = load.vest().map(v -> "+" + v.value().toPlainString()).orElse("");
    return load.mass().value().toPlainString() + load.mass().unit().word() + kind + vest;
  }

  /** Kind of what is missing, for example {@code good-sets}. */
  static String word(Missing missing) {
    return missing
        .getClass()
        .getSimpleName()
        .replaceAll("([a-z])([A-Z])", "$1-$2")
        .toLowerCase(java.util.Locale.ROOT);
  }

  @Override
  public String toString() {
    return name;
  }
}
