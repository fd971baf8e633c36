package shinline.cli.record;

import java.time.LocalDate;

/**
 * The coach's own decision in place of the advice.
 *
 * @param instead what is done instead, in the coach's words; may be empty
 */
public record Overrule(String id, LocalDate date, String reason, String instead) {}
