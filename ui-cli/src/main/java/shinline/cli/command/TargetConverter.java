package shinline.cli.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.targetfile.TargetFile;
import shinline.cli.words.Words;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;

/** Reads a shin word, or the target file of that name, on the command line. */
final class TargetConverter implements ITypeConverter<Target> {
  @Override
  public Target convert(String value) {
    Optional<Target> preset = ShinPreset.of(value).map(Target::preset);
    if (preset.isPresent()) {
      return preset.get();
    }
    Path file = file(value).orElseThrow(() -> new TypeConversionException(neither(value)));
    return TargetFile.read(file)
        .fold(
            target -> target,
            refused -> {
              throw new TypeConversionException(
                  refused.under(Words.say("check.bad-target-file"), file));
            });
  }

  /** A mistyped word must not be answered with "no such file", so a file has to look like one. */
  private static Optional<Path> file(String value) {
    try {
      Path path = Path.of(value);
      String name = value.toLowerCase(Locale.ROOT);
      return name.endsWith(".yaml") || name.endsWith(".yml") || Files.exists(path)
          ? Optional.of(path).filter(p -> p.getFileName() != null)
          : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static String neither(String value) {
    return Words.say(
        "check.no-target",
        value,
        Arrays.stream(ShinPreset.values()).map(ShinPreset::word).collect(Collectors.joining(", ")));
  }
}
