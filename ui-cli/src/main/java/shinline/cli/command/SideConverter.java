package shinline.cli.command;

import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.words.Words;
import shinline.metrics.track.Side;

/** Reads {@code left} or {@code right}. */
final class SideConverter implements ITypeConverter<Side> {
  @Override
  public Side convert(String value) {
    return Arrays.stream(Side.values())
        .filter(side -> side.name().toLowerCase(Locale.ROOT).equals(value.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException(Words.say("check.no-side", value)));
  }
}
