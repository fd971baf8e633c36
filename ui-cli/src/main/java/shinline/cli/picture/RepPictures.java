package shinline.cli.picture;

import java.util.List;
import java.util.Optional;
import shinline.metrics.fault.FlagKind;

/** The pictures of one set, ready to be embedded in a page. */
@FunctionalInterface
public interface RepPictures {

  /**
   * Rep by rep: the bottom first, where there is one, then the faults in the order of their kinds.
   * A long set has the bottoms of its flagged reps only.
   */
  List<RepPicture> all();

  /** The picture of a fault. */
  default Optional<RepPicture> flag(int rep, FlagKind kind) {
    return all().stream()
        .filter(p -> p.rep() == rep && p.flag().equals(Optional.of(kind)))
        .findFirst();
  }

  /** The picture of a rep's bottom. */
  default Optional<RepPicture> bottom(int rep) {
    return all().stream().filter(p -> p.rep() == rep && p.flag().isEmpty()).findFirst();
  }

  /** No pictures: the clip could not be looked at a second time. */
  static RepPictures none() {
    return List::of;
  }
}
