package shinline.cli.advice;

import java.util.Optional;
import shinline.cli.record.AthleteName;
import shinline.cli.record.Overrule;
import shinline.metrics.advice.Advice;

/**
 * The advice for an athlete, and what the coach made of it.
 *
 * @param overrule the coach's own decision since the last work set, up to the day of the advice
 */
public record GivenAdvice(AthleteName athlete, Advice advice, Optional<Overrule> overrule) {}
