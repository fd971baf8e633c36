package shinline.cli.command;

import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.csv.DecimalSign;
import shinline.cli.words.Words;

/** Reads the sign before the decimals on the command line. */
final class DecimalConverter implements ITypeConverter<DecimalSign> {
  @Override
  public DecimalSign convert(String value) {
    return switch (value) {
      case "point" -> DecimalSign.POINT;
      case "comma" -> DecimalSign.COMMA;
      default ->
          throw new TypeConversionException(
              Words.say("option.among", value, String.join(", ", List.of("point", "comma"))));
    };
  }
}
