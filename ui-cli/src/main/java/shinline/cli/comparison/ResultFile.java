package shinline.cli.comparison;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shinline.cli.format.ResultDocument;
import shinline.cli.format.ResultJson;
import shinline.cli.format.ResultRep;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;
import shinline.metrics.result.Reading;

/**
 * A result of {@code check --json}, read back.
 *
 * @param all at least one
 */
record ResultFile(Path file, List<ResultRep> all) {

  /**
   * @throws CoachException when it cannot be read, is no result, or holds no rep
   */
  static ResultFile read(Path file) {
    ResultDocument result;
    try {
      result = ResultJson.read(file);
    } catch (MismatchedInputException e) {
      throw unreadable("compare.no-result", file);
    } catch (JsonProcessingException e) {
      throw unreadable("compare.no-json", file);
    } catch (IOException e) {
      throw unreadable("compare.no-file", file);
    }
    if (result.reps().isEmpty()) {
      throw unreadable("compare.no-reps", file);
    }
    return new ResultFile(file, result.reps());
  }

  private static CoachException unreadable(String words, Path file) {
    return new CoachException(ExitCode.UNREADABLE, Words.say(words, file));
  }

  int reps() {
    return all.size();
  }

  /**
   * @param rep from 1
   */
  Optional<Reading.Measured> value(Compared what, int rep) {
    return what.part().apply(all.get(rep - 1)).getOrDefault(what.key(), Optional.empty());
  }
}
