package shinline.cli.advice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The cases worked by hand in {@code metrics}, each written as lines of a record; the head of
 * cases.txt tells how to read them.
 */
final class WorkedCases {
  private static final Path FILE =
      Path.of("..", "metrics", "src", "test", "resources", "shinline", "metrics", "advice")
          .resolve("cases.txt");

  private WorkedCases() {}

  /** One case. */
  static final class Case {
    final String name;
    final List<String> record = new ArrayList<>();
    String asOf = "";
    String next = "";
    String earliest = "";
    int missing;
    String ladder = "";

    Case(String name) {
      this.name = name;
    }

    private void line(String kind, String rest) {
      record.add(
          "{\"schema\":\"shinline-record/1\",\"id\":\"line-%d\",\"recordedAt\":\"2026-04-01T09:00:00Z\",\"kind\":\"%s\",\"athlete\":\"Mira Voss\"%s}"
              .formatted(record.size() + 1, kind, rest));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> all() throws IOException {
    List<Case> cases = new ArrayList<>();
    for (String line : Files.readAllLines(FILE)) {
      if (line.startsWith("case ")) {
        cases.add(new Case(line));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        read(cases.get(cases.size() - 1), line.strip().split("\\s+"));
      }
    }
    return cases;
  }

  private static void read(Case into, String[] words) {
    List<String> rest = Arrays.asList(words).subList(1, words.length);
    switch (words[0]) {
      case "set" -> set(into, rest);
      case "athlete" ->
          into.line(
              "athlete",
              rest.stream()
                  .map(w -> w.split("="))
                  .map(
                      w ->
                          switch (w[0]) {
                            case "mass" -> ",\"massKg\":" + w[1];
                            case "born" -> ",\"birthYear\":" + w[1];
                            default -> ",\"startStep\":\"" + w[1] + "\"";
                          })
                  .reduce("", String::concat));
      case "clearance" -> into.line("clearance", date(rest.get(0)));
      case "gate" -> into.line("gate", date(rest.get(0)) + ",\"gate\":\"hip-flexor-range\"");
      case "release" -> into.line("release", date(rest.get(0)) + ",\"release\":\"short-range\"");
      case "dumbbells" ->
          into.ladder =
              "ladder: shinline-ladder/1\nat-hand:\n  kg: {dumbbells: ["
                  + String.join(", ", rest).replace("kg", "")
                  + "]}\n";
      case "as-of" -> into.asOf = rest.get(0);
      case "next" -> into.next = String.join(" ", rest);
      case "earliest" -> into.earliest = rest.get(0);
      case "missing" -> into.missing = rest.size();
      default -> {} // why; lines, which metrics checks
    }
  }

  private static String date(String date) {
    return ",\"date\":\"" + date + "\"";
  }

  private static void set(Case into, List<String> words) {
    String[] asked = words.get(4).split("x");
    String pain = words.contains("pain") ? "true" : words.contains("no-pain") ? "false" : "null";
    String purpose =
        words.stream().filter(w -> w.startsWith("purpose=")).findFirst().orElse("purpose=work");
    List<String> legs =
        words.get(1).equals("both") ? List.of("left", "right") : List.of(words.get(1));
    for (String leg : legs) {
      for (String word : words) {
        if (!word.matches("\\d+/\\d+(u\\d+)?")) {
          continue;
        }
        String[] result = word.split("[/u]");
        into.line(
            "set",
            date(words.get(0))
                + ",\"leg\":\"%s\",\"step\":\"%s\",\"purpose\":\"%s\""
                    .formatted(leg, words.get(2), purpose.substring("purpose=".length()))
                + ",\"asked\":{%s\"reps\":%s,\"target\":\"%s\"}"
                    .formatted(
                        asked[0].equals("?") ? "" : "\"sets\":" + asked[0] + ",",
                        asked[1],
                        words.get(3))
                + ",\"load\":"
                + load(words.get(5))
                + ",\"pain\":"
                + pain
                + ",\"result\":{\"reps\":%s,\"cleanReps\":%s,\"unclear\":%s}"
                    .formatted(result[1], result[0], result.length > 2 ? result[2] : "0"));
      }
    }
  }

  private static String load(String word) {
    if (word.equals("none")) {
      return "null";
    }
    String[] vest = word.split("\\+");
    String[] kind = vest[0].split(":");
    return "{\"value\":%s,\"unit\":\"%s\",\"kind\":\"%s\"%s}"
        .formatted(
            kind[0].replaceAll("[a-z]", ""),
            kind[0].replaceAll("[0-9.]", ""),
            kind.length > 1 ? kind[1] : "each-hand",
            vest.length > 1 ? ",\"vest\":" + vest[1] : "");
  }
}
