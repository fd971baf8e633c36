package shinline.cli.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.csv.DecimalSign;
import shinline.cli.record.AthleteName;
import shinline.cli.text.Length;
import shinline.cli.text.ModelWords;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.target.Target;
import shinline.metrics.track.Side;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.SetSource;
import shinline.vision.observation.DiscWanted;
import shinline.vision.pose.PoseModel;

/** Reads the values of options and names on the command line: each type in one way. */
public final class OptionValues {
  private static final Pattern MASS = Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(kg|lb)");
  private static final Pattern PLACE = Pattern.compile("\\s*(\\d{1,5})\\s*,\\s*(\\d{1,5})\\s*");

  private OptionValues() {}

  /** Has a command and those under it read their values so. */
  public static void register(CommandLine line) {
    line.registerConverter(AthleteName.class, OptionValues::athlete);
    line.registerConverter(LocalDate.class, OptionValues::date);
    line.registerConverter(Length.class, OptionValues::length);
    line.registerConverter(
        Mass.class, v -> mass(v).orElseThrow(() -> refused(Words.say("option.mass", v))));
    line.registerConverter(
        Side.class, v -> one(v, Side.values(), Side::name, Words.say("check.no-side", v)));
    line.registerConverter(Target.class, new TargetConverter());
    line.registerConverter(DiscWanted.Place.class, OptionValues::place);
    line.registerConverter(PoseModel.class, OptionValues::model);
    line.registerConverter(
        Units.class, v -> one(v, Units.values(), Units::name, Words.say("check.no-units", v)));
    line.registerConverter(
        DecimalSign.class, v -> among(v, DecimalSign.values(), DecimalSign::name));
    line.registerConverter(Purpose.class, v -> among(v, Purpose.values(), Purpose::word));
    line.registerConverter(LoadKind.class, v -> among(v, LoadKind.values(), LoadKind::word));
    line.registerConverter(SetSource.class, v -> among(v, SetSource.values(), SetSource::word));
    line.registerConverter(Double.class, OptionValues::number);
    line.registerConverter(double.class, OptionValues::number);
    line.registerConverter(Integer.class, OptionValues::whole);
    line.registerConverter(int.class, OptionValues::whole);
  }

  private static AthleteName athlete(String value) {
    if (value.isBlank()) {
      throw refused(Words.say("option.athlete"));
    }
    return new AthleteName(value);
  }

  /** Year-month-day: other orders differ from country to country. */
  private static LocalDate date(String value) {
    try {
      return LocalDate.parse(value.strip());
    } catch (DateTimeException e) {
      throw refused(Words.say("option.date", value));
    }
  }

  private static double number(String value) {
    try {
      return Double.parseDouble(value.strip());
    } catch (NumberFormatException e) {
      throw refused(Words.say("option.number", value));
    }
  }

  private static int whole(String value) {
    try {
      return Integer.parseInt(value.strip());
    } catch (NumberFormatException e) {
      throw refused(Words.say("option.whole", value));
    }
  }

  private static Length length(String value) {
    return Length.parse(value).orElseThrow(() -> refused(Words.say("check.no-length", value)));
  }

  /** A mass with its unit, for example {@code 22.5kg} or {@code 45lb}. */
  static Optional<Mass> mass(String value) {
    Matcher matcher = MASS.matcher(value.strip().toLowerCase(Locale.ROOT));
    return matcher.matches()
        ? MassUnit.of(matcher.group(2)).map(u -> Mass.of(matcher.group(1).replace(',', '.'), u))
        : Optional.empty();
  }

  private static DiscWanted.Place place(String value) {
    Matcher place = PLACE.matcher(value);
    if (!place.matches()) {
      throw refused(Words.say("check.no-place", value));
    }
    return new DiscWanted.Place(Integer.parseInt(place.group(1)), Integer.parseInt(place.group(2)));
  }

  /** The coach's word for a pose model, or the model's own, as results hold it. */
  private static PoseModel model(String value) {
    PoseModel[] all = PoseModel.values();
    return Arrays.stream(all)
        .filter(model -> ModelWords.of(model).equals(value) || model.word().equals(value))
        .findFirst()
        .orElseThrow(() -> refused(Words.say("check.no-model", value, words(all, ModelWords::of))));
  }

  private static <T> T one(String value, T[] all, Function<T, String> word, String refusal) {
    return Arrays.stream(all)
        .filter(t -> word.apply(t).equalsIgnoreCase(value))
        .findFirst()
        .orElseThrow(() -> refused(refusal));
  }

  private static <T> T among(String value, T[] all, Function<T, String> word) {
    return one(value, all, word, Words.say("option.among", value, words(all, word)));
  }

  private static <T> String words(T[] all, Function<T, String> word) {
    return Arrays.stream(all).map(word).collect(Collectors.joining(", ")).toLowerCase(Locale.ROOT);
  }

  private static TypeConversionException refused(String why) {
    return new TypeConversionException(why);
  }
}
