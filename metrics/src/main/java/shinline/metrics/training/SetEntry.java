package shinline.metrics.training;

import java.time.LocalDate;
import java.util.Optional;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;

/**
 * One set of one leg, as far as what is next depends on it.
 *
 * @param step id of the ladder's step
 * @param load empty without load, or when it was not written down
 */
public record SetEntry(
    LocalDate date,
    Side leg,
    String step,
    Purpose purpose,
    Asked asked,
    Optional<TrainingLoad> load,
    Pain pain,
    SetCounts counts) {}
