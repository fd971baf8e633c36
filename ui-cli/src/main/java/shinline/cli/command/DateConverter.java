package shinline.cli.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.words.Words;

/** A date as year-month-day: other orders differ from country to country. */
final class DateConverter implements ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String value) {
    try {
      return LocalDate.parse(value.strip());
    } catch (DateTimeException e) {
      throw new TypeConversionException(Words.say("option.date", value));
    }
  }
}
