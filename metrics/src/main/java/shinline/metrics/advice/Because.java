package shinline.metrics.advice;

import java.util.List;

/**
 * A rule that led to the advice.
 *
 * @param lines ids of the lines on record it rests on
 */
public record Because(Rule rule, List<String> lines) {
  public Because {
    lines = lines.stream().distinct().toList();
  }
}
