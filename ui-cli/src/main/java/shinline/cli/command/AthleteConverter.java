package shinline.cli.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.record.AthleteName;
import shinline.cli.words.Words;

/** A name that is not blank. */
final class AthleteConverter implements ITypeConverter<AthleteName> {
  @Override
  public AthleteName convert(String value) {
    if (value.isBlank()) {
      throw new TypeConversionException(Words.say("option.athlete"));
    }
    return new AthleteName(value);
  }
}
