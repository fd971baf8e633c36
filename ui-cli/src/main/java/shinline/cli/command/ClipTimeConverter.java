package shinline.cli.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.words.Words;

/** Reads a time in a clip: {@code 3.2s}, {@code 41} or {@code 1:05.5}; seconds. */
final class ClipTimeConverter implements ITypeConverter<Double> {
  private static final Pattern TIME =
      Pattern.compile("(?:(\\d{1,4}):)?(\\d{1,6}(?:[.,]\\d{1,6})?)\\s*s?");

  @Override
  public Double convert(String value) {
    Matcher time = TIME.matcher(value.trim());
    if (!time.matches()) {
      throw new TypeConversionException(Words.say("check.no-time", value));
    }
    double minutes = time.group(1) == null ? 0 : Double.parseDouble(time.group(1));
    return 60 * minutes + Double.parseDouble(time.group(2).replace(',', '.'));
  }
}
