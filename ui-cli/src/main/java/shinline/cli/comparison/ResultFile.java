package shinline.cli.comparison;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;

/** A result of {@code check --json}, read back. */
final class ResultFile {
  private final Path file;
  private final List<JsonNode> reps;

  private ResultFile(Path file, List<JsonNode> reps) {
    this.file = file;
    this.reps = reps;
  }

  /**
   * A value of one rep.
   *
   * @param plusMinusWithin as {@code plusMinus} where the file does not have it
   */
  record Value(double value, double plusMinus, double plusMinusWithin) {}

  /**
   * @throws CoachException when it cannot be read, is no result, or holds no rep
   */
  static ResultFile read(Path file) {
    JsonNode result;
    try {
      result = new ObjectMapper().readTree(Files.readAllBytes(file));
    } catch (JsonProcessingException e) {
      throw unreadable("compare.no-json", file);
    } catch (IOException e) {
      throw unreadable("compare.no-file", file);
    }
    if (result == null || !result.path("schema").asText().startsWith("shinline-result/")) {
      throw unreadable("compare.no-result", file);
    }
    List<JsonNode> reps = new ArrayList<>();
    result.path("reps").forEach(reps::add);
    if (reps.isEmpty()) {
      throw unreadable("compare.no-reps", file);
    }
    return new ResultFile(file, reps);
  }

  private static CoachException unreadable(String words, Path file) {
    return new CoachException(ExitCode.UNREADABLE, Words.say(words, file));
  }

  Path file() {
    return file;
  }

  int reps() {
    return reps.size();
  }

  /**
   * @param rep from 1
   */
  Optional<Value> value(Compared what, int rep) {
    JsonNode reading = reps.get(rep - 1).path(what.part()).path(what.key());
    if (!reading.path("value").isNumber() || !reading.path("plusMinus").isNumber()) {
      return Optional.empty();
    }
    double plusMinus = reading.get("plusMinus").asDouble();
    return Optional.of(
        new Value(
            reading.get("value").asDouble(),
            plusMinus,
            reading.path("plusMinusWithin").asDouble(plusMinus)));
  }
}
