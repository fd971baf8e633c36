package shinline.cli.record;

import shinline.cli.words.Words;

/**
 * Something wrong with a line of the record; the other lines count all the same.
 *
 * @param line number, from 1
 * @param what what is wrong and what to do
 */
public record LineProblem(int line, String what) {

  /** For the coach, for example "record.jsonl line 7: …". */
  public String text() {
    return Words.say("record.line", line, what);
  }
}
