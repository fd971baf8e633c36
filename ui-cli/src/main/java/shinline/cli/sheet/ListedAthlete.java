package shinline.cli.sheet;

import java.util.Optional;
import shinline.cli.record.AthleteName;
import shinline.cli.text.Length;

/**
 * A row of the athletes' table.
 *
 * @param startStep id of the step the athlete starts at
 */
public record ListedAthlete(
    AthleteName name, Optional<Length> height, Optional<String> startStep) {}
