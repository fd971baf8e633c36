package shinline.cli.targetfile;

import java.util.OptionalInt;

/**
 * One thing wrong with a target file.
 *
 * @param line from 1; empty when the file as a whole is meant
 * @param field dotted path, for example {@code tempo.lowering}; empty when no field is meant
 * @param what what is wrong
 * @param whatToDo how to put it right
 */
public record Problem(OptionalInt line, String field, String what, String whatToDo) {

  /** One line for the coach, for example "day.yaml line 7, tempo.hold: …; …". */
  public String text(String file) {
    StringBuilder text = new StringBuilder(file);
    line.ifPresent(n -> text.append(" line ").append(n));
    if (!field.isEmpty()) {
      text.append(", ").append(field);
    }
    return text.append(": ").append(what).append("; ").append(whatToDo).toString();
  }
}
