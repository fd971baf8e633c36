package shinline.cli.command;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.record.SetFields;
import shinline.cli.words.Words;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.track.Side;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.SetSource;

/** The fields of a set as options; those not given are empty. */
final class SetOptions {
  @Option(names = "--date", paramLabel = "DATE", descriptionKey = "shinline.set.date")
  @Nullable LocalDate date;

  @Option(names = "--leg", paramLabel = "LEG", descriptionKey = "shinline.set.leg")
  private @Nullable Side leg;

  @Option(names = "--step", paramLabel = "STEP", descriptionKey = "shinline.set.step")
  private @Nullable String step;

  @Option(names = "--set", paramLabel = "LABEL", descriptionKey = "shinline.set.set")
  private @Nullable String label;

  @Option(names = "--purpose", paramLabel = "PURPOSE", descriptionKey = "shinline.set.purpose")
  private @Nullable Purpose purpose;

  @Option(names = "--asked-sets", paramLabel = "N", descriptionKey = "shinline.set.asked-sets")
  private @Nullable Integer askedSets;

  @Option(names = "--asked-reps", paramLabel = "N", descriptionKey = "shinline.set.asked-reps")
  private @Nullable Integer askedReps;

  @Option(names = "--target", paramLabel = "TARGET", descriptionKey = "shinline.set.target")
  private @Nullable String target;

  @Option(names = "--tempo", paramLabel = "TEMPO", descriptionKey = "shinline.set.tempo")
  private @Nullable String tempo;

  @Option(names = "--depth", paramLabel = "DEPTH", descriptionKey = "shinline.set.depth")
  private @Nullable String depth;

  @Option(
      names = "--load",
      paramLabel = "MASS",
      descriptionKey = "shinline.set.load",
      converter = LoadText.class)
  private @Nullable String load;

  @Option(names = "--load-kind", paramLabel = "KIND", descriptionKey = "shinline.set.load-kind")
  private @Nullable LoadKind kind;

  @Option(names = "--vest", paramLabel = "MASS", descriptionKey = "shinline.set.vest")
  private @Nullable Mass vest;

  @Option(
      names = "--pain",
      paramLabel = "yes|no|not-asked",
      descriptionKey = "shinline.set.pain",
      converter = PainWord.class)
  private @Nullable String pain;

  @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "shinline.set.note")
  private @Nullable String note;

  @Option(names = "--source", paramLabel = "SOURCE", descriptionKey = "shinline.set.source")
  private @Nullable SetSource source;

  @Option(names = "--reps", paramLabel = "N", descriptionKey = "shinline.set.reps")
  private @Nullable Integer reps;

  @Option(names = "--clean", paramLabel = "N", descriptionKey = "shinline.set.clean")
  private @Nullable Integer clean;

  @Option(names = "--hit", paramLabel = "N", descriptionKey = "shinline.set.hit")
  private @Nullable Integer hit;

  @Option(names = "--near", paramLabel = "N", descriptionKey = "shinline.set.near")
  private @Nullable Integer near;

  @Option(names = "--miss", paramLabel = "N", descriptionKey = "shinline.set.miss")
  private @Nullable Integer miss;

  @Option(names = "--unclear", paramLabel = "N", descriptionKey = "shinline.set.unclear")
  private @Nullable Integer unclear;

  @Option(names = "--flag", paramLabel = "KIND=N", descriptionKey = "shinline.set.flag")
  private @Nullable Map<String, Integer> flags;

  @Option(
      names = "--at-bottom",
      paramLabel = "MEASURE=MEAN[/PM[/PM]]",
      descriptionKey = "shinline.set.at-bottom")
  private @Nullable Map<String, String> atBottom;

  @Option(names = "--lowering-s", paramLabel = "S", descriptionKey = "shinline.set.lowering-s")
  private @Nullable Double loweringS;

  @Option(names = "--hold-s", paramLabel = "S", descriptionKey = "shinline.set.hold-s")
  private @Nullable Double holdS;

  @Option(names = "--drive-speed", paramLabel = "MPS", descriptionKey = "shinline.set.drive-speed")
  private @Nullable Double driveSpeed;

  @Option(names = "--bar-speed", paramLabel = "MPS", descriptionKey = "shinline.set.bar-speed")
  private @Nullable Double barSpeed;

  @Option(names = "--clip-sha256", paramLabel = "HEX", descriptionKey = "shinline.set.clip-sha256")
  private @Nullable String sha256;

  @Option(
      names = "--measured-by",
      paramLabel = "VERSION",
      descriptionKey = "shinline.set.measured-by")
  private @Nullable String version;

  /** The fields given. */
  SetFields fields() {
    SetFields fields = new SetFields();
    fields.text("date", date == null ? null : date.toString());
    fields.text("leg", leg == null ? null : leg.name().toLowerCase(Locale.ROOT));
    fields.text("step", step);
    fields.text("set", label);
    fields.text("purpose", purpose == null ? null : purpose.word());
    fields.asked("sets", askedSets).asked("reps", askedReps);
    fields.asked("target", target).asked("tempo", tempo).asked("depth", depth);
    load(fields);
    if (pain != null) {
      fields.pain(pain.equals("yes"), !pain.equals("not-asked"));
    }
    fields.text("note", note);
    fields.text("source", source == null ? null : source.word());
    fields.result("sha256", sha256).result("version", version);
    fields.result("reps", reps);
    fields.result("hit", hit).result("near", near).result("miss", miss);
    fields.result("unclear", unclear).result("cleanReps", clean);
    fields.result("loweringS", loweringS).result("holdS", holdS);
    fields.result("driveSpeedMps", driveSpeed).result("barSpeedMps", barSpeed);
    if (flags != null) {
      fields.flags(flags);
    }
    if (atBottom != null) {
      Map<String, List<Double>> numbers = new LinkedHashMap<>();
      atBottom.forEach((measure, text) -> numbers.put(measure, numbers(measure, text)));
      fields.atBottom(numbers);
    }
    return fields;
  }

  private void load(SetFields fields) {
    if (load != null && load.equals("none")) {
      fields.noLoad();
    } else if (load != null) {
      fields.load(OptionValues.mass(load).orElseThrow());
    }
    fields.load("kind", kind == null ? null : kind.word());
    if (vest != null) {
      fields.vest(vest);
    }
  }

  private static List<Double> numbers(String measure, String text) {
    try {
      List<Double> numbers = List.of(text.split("/", -1)).stream().map(Double::valueOf).toList();
      if (numbers.size() <= 3 && numbers.stream().allMatch(Double::isFinite)) {
        return numbers;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new TypeConversionException(Words.say("option.at-bottom", measure, text));
  }

  private static String among(String value, List<String> words) {
    if (!words.contains(value)) {
      throw new TypeConversionException(Words.say("option.among", value, String.join(", ", words)));
    }
    return value;
  }

  private static final class PainWord implements ITypeConverter<String> {
    @Override
    public String convert(String value) {
      return among(value, List.of("yes", "no", "not-asked"));
    }
  }

  private static final class LoadText implements ITypeConverter<String> {
    @Override
    public String convert(String value) {
      if (!value.equals("none") && OptionValues.mass(value).isEmpty()) {
        throw new TypeConversionException(Words.say("option.mass", value));
      }
      return value;
    }
  }
}
