package shinline.cli.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads lengths on the command line. */
final class LengthConverter implements ITypeConverter<Length> {
  @Override
  public Length convert(String value) {
    return Length.parse(value)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "'"
                        + value
                        + "' is not a length with a unit; write for example 178cm, 1.78m or"
                        + " 5ft10in"));
  }
}
