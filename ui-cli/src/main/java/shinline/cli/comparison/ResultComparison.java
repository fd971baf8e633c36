package shinline.cli.comparison;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;
import shinline.metrics.result.Reading;

/**
 * Says what repeats. Two clips of one set show one athlete, so the body's own bias is in both and
 * cancels: differences are held against the ± without it. Somebody's own measurement has no such
 * bias and is held against the whole ±.
 */
public final class ResultComparison {
  private ResultComparison() {}

  /**
   * Something measured by other means.
   *
   * @param what the word and the value as typed, for example {@code shin=32deg}
   */
  public record Measured(String what) {}

  /** Two results of the same set, measure by measure over the reps both have. */
  public static List<String> ofTwo(Path first, Path second) {
    ResultFile a = ResultFile.read(first);
    ResultFile b = ResultFile.read(second);
    int reps = Math.min(a.reps(), b.reps());
    List<String> lines = new ArrayList<>();
    lines.add(Words.say("compare.two.heading", a.file(), b.file(), reps));
    if (a.reps() != b.reps()) {
      lines.add(Words.say("compare.two.uneven", a.reps(), b.reps()));
    }
    for (Compared what : Compared.values()) {
      lines.add(line(what, a, b, reps));
    }
    lines.add(Words.say("compare.two.closing"));
    return lines;
  }

  private static String line(Compared what, ResultFile a, ResultFile b, int reps) {
    int both = 0;
    int repeat = 0;
    double differences = 0;
    double widest = 0;
    for (int rep = 1; rep <= reps; rep++) {
      Optional<Reading.Measured> one = a.value(what, rep);
      Optional<Reading.Measured> other = b.value(what, rep);
      if (one.isPresent() && other.isPresent()) {
        double difference = other.get().value() - one.get().value();
        double width = Math.hypot(one.get().plusMinusWithin(), other.get().plusMinusWithin());
        both++;
        repeat += Math.abs(difference) <= width ? 1 : 0;
        differences += difference;
        widest = Math.max(widest, width);
      }
    }
    String name = Words.of(what, "name");
    if (both == 0) {
      return Words.say("compare.two.missing", name);
    }
    return Words.say(
        both == repeat ? "compare.two.repeats" : "compare.two.differs",
        name,
        what.words(differences / both),
        what.words(widest),
        repeat,
        both);
  }

  /**
   * One rep of a result against what was measured by other means.
   *
   * @param rep from 1; may be left away where the result has one rep
   * @throws CoachException for a word, unit or rep that does not fit
   */
  public static List<String> ofMeasured(
      Path result, List<Measured> measured, Optional<Integer> rep) {
    ResultFile file = ResultFile.read(result);
    if (rep.isEmpty() && file.reps() > 1) {
      throw CoachException.usage(Words.say("compare.which-rep", file.reps()));
    }
    int number = rep.orElse(1);
    if (number < 1 || number > file.reps()) {
      throw CoachException.usage(
          Words.say("compare.no-such-rep", number, file.file(), file.reps()));
    }
    List<String> lines = new ArrayList<>();
    lines.add(Words.say("compare.measured.heading", file.file(), number));
    for (Measured one : measured) {
      lines.add(line(file, number, one));
    }
    return lines;
  }

  private static String line(ResultFile file, int rep, Measured measured) {
    int sign = measured.what().indexOf('=');
    Compared what =
        Compared.of(sign < 0 ? "" : measured.what().substring(0, sign).trim())
            .orElseThrow(
                () -> CoachException.usage(Words.say("compare.no-measure", measured.what())));
    String text = measured.what().substring(sign + 1).trim();
    int end = endOf(text);
    double value =
        number(text.substring(0, end))
            .flatMap(n -> what.dimension().factor(text.substring(end).trim()).map(f -> f * n))
            .orElseThrow(
                () -> CoachException.usage(Words.say("compare.no-value", measured.what())));
    String name = Words.of(what, "name");
    Optional<Reading.Measured> seen = file.value(what, rep);
    if (seen.isEmpty()) {
      return Words.say("compare.measured.missing", name, what.words(value));
    }
    double off = Math.abs(seen.get().value() - value);
    String shown = what.words(seen.get().value());
    String plusMinus = what.number(seen.get().plusMinus());
    return off <= seen.get().plusMinus()
        ? Words.say("compare.measured.agrees", name, shown, plusMinus, what.words(value))
        : Words.say(
            "compare.measured.differs", name, shown, plusMinus, what.words(value), what.words(off));
  }

  private static int endOf(String text) {
    int end = 0;
    while (end < text.length() && "+-.,0123456789".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    return end;
  }

  private static Optional<Double> number(String text) {
    return text.matches("[+-]?\\d{1,6}([.,]\\d{1,6})?")
        ? Optional.of(Double.parseDouble(text.replace(',', '.')))
        : Optional.empty();
  }
}
