package shinline.cli.yaml;

import java.util.OptionalInt;
import shinline.cli.words.Words;

/**
 * One thing wrong with a file of the coach's.
 *
 * @param line from 1; empty when the file as a whole is meant
 * @param field dotted path, for example {@code tempo.lowering}; empty when no field is meant
 * @param what what is wrong
 * @param whatToDo how to put it right
 */
public record Problem(OptionalInt line, String field, String what, String whatToDo) {

  /** One line for the coach, for example "day.yaml line 7, tempo.hold: …; …". */
  public String text(String file) {
    String place = file;
    if (line.isPresent()) {
      place = Words.say("yaml.place.line", place, line.getAsInt());
    }
    if (!field.isEmpty()) {
      place = Words.say("yaml.place.field", place, field);
    }
    return Words.say("yaml.problem", place, what, whatToDo);
  }
}
