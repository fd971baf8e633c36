package shinline.cli.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.metrics.ladder.Scheme;

/** Words of a ladder file. */
final class Texts {
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");
  private static final Pattern SCHEME = Pattern.compile("(\\d{1,2}) ?[xX×] ?(\\d{1,2})");
  private static final String PHASE = "(\\d{1,2}(\\.\\d)?|X)";
  private static final Pattern TEMPO = Pattern.compile(PHASE + "(-" + PHASE + "){0,3}");
  private static final int LONGEST = 200;

  private Texts() {}

  /** A bare word, as written on record. */
  static Optional<String> name(Field field) {
    Optional<String> name = field.word().filter(w -> NAME.matcher(w).matches());
    return name.isPresent()
        ? name
        : field.wrong(
            Words.say("ladder-file.name", field.shown()), Words.say("ladder-file.name.do"));
  }

  static List<String> names(Field field) {
    return list(field, Words.say("ladder-file.names")).stream()
        .flatMap(f -> name(f).stream())
        .toList();
  }

  /** A sentence. */
  static Optional<String> sentence(Field field) {
    Optional<String> text =
        field
            .word()
            .filter(w -> !w.isEmpty() && w.length() <= LONGEST)
            .filter(w -> w.chars().noneMatch(Character::isISOControl));
    return text.isPresent()
        ? text
        : field.wrong(
            Words.say("ladder-file.sentence", field.shown()),
            Words.say("ladder-file.sentence.do", LONGEST));
  }

  static List<String> sentences(Field field) {
    return list(field, Words.say("ladder-file.sentences")).stream()
        .flatMap(f -> sentence(f).stream())
        .toList();
  }

  static Optional<String> tempo(Field field) {
    Optional<String> tempo = field.word().filter(w -> TEMPO.matcher(w).matches());
    return tempo.isPresent()
        ? tempo
        : field.wrong(
            Words.say("ladder-file.tempo", field.shown()), Words.say("ladder-file.tempo.do"));
  }

  /** Sets and reps, for example {@code 3x8}. */
  static Optional<Scheme> scheme(Field field) {
    Matcher matcher = SCHEME.matcher(field.word().orElse(""));
    if (matcher.matches()) {
      int sets = Integer.parseInt(matcher.group(1));
      int reps = Integer.parseInt(matcher.group(2));
      if (sets > 0 && reps > 0) {
        return Optional.of(new Scheme(sets, reps));
      }
    }
    return field.wrong(
        Words.say("ladder-file.sets", field.shown()), Words.say("ladder-file.sets.do"));
  }

  static List<Scheme> schemes(Field field) {
    return list(field, Words.say("ladder-file.sets.list")).stream()
        .flatMap(f -> scheme(f).stream())
        .toList();
  }

  /** The values of a list that must not be empty. */
  static List<Field> list(Field field, String whatToDo) {
    List<Field> items = new ArrayList<>(field.items());
    if (items.isEmpty()) {
      field.wrong(Words.say("ladder-file.list", field.shown()), whatToDo);
    }
    return items;
  }
}
