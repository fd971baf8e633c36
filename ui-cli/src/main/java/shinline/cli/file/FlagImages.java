package shinline.cli.file;

import java.util.Optional;
import shinline.metrics.fault.FlagKind;

/** Names of the pictures that lie beside a result file. */
@FunctionalInterface
public interface FlagImages {

  /** Name of a fault's picture, without folders; empty when there is none. */
  Optional<String> fileName(int rep, FlagKind kind);

  static FlagImages none() {
    return (rep, kind) -> Optional.empty();
  }
}
