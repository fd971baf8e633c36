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

  /** What was shortly before and after the flags that tell the story. */
  default List<Moment> moments() {
    return List.of();
  }

  /** What was shortly before or after a fault. */
  default Optional<RepPicture> moment(int rep, FlagKind kind, Moment.When when) {
    return moments().stream()
        .filter(m -> m.rep() == rep && m.kind() == kind && m.when() == when)
        .map(Moment::picture)
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
