package shinline.cli.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.text.Length;
import shinline.cli.words.Words;

/** Reads lengths on the command line. */
final class LengthConverter implements ITypeConverter<Length> {
  @Override
  public Length convert(String value) {
    return Length.parse(value)
        .orElseThrow(() -> new TypeConversionException(Words.say("check.no-length", value)));
  }
}
