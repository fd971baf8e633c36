package shinline.metrics.result;

/**
 * Phase lengths of a rep in seconds (docs/measures.md, five per cent rule on mid-hip height).
 *
 * @param top rest before the next rep; not measured for the last rep
 */
public record TempoReading(Reading lowering, Reading hold, Reading drive, Reading top) {}
