package shinline.cli.command;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.words.Words;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** A mass with its unit, for example {@code 22.5kg} or {@code 45lb}. */
final class MassConverter implements ITypeConverter<Mass> {
  private static final Pattern MASS = Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(kg|lb)");

  @Override
  public Mass convert(String value) {
    return parse(value)
        .orElseThrow(() -> new TypeConversionException(Words.say("option.mass", value)));
  }

  static Optional<Mass> parse(String value) {
    Matcher matcher = MASS.matcher(value.strip().toLowerCase(Locale.ROOT));
    return matcher.matches()
        ? MassUnit.of(matcher.group(2)).map(u -> Mass.of(matcher.group(1).replace(',', '.'), u))
        : Optional.empty();
  }
}
