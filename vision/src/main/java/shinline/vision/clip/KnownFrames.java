package shinline.vision.clip;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A few pictures of a film, by the stamps that an earlier reading in the same way gave them. */
public final class KnownFrames implements FrameChoice {
  private final List<FrameStamp> stamps;
  private final Set<Integer> indices;
  private final int ofFrames;

  /**
   * @param stamps in any order, one a picture
   * @param ofFrames all pictures that the earlier reading came upon, wanted or not; the film is
   *     leapt through only if those were all it promises, as stamps behind damage can be wrong
   */
  public KnownFrames(Collection<FrameStamp> stamps, int ofFrames) {
    this.stamps =
        stamps.stream().sorted(Comparator.comparingInt(FrameStamp::index)).distinct().toList();
    this.indices = stamps.stream().map(FrameStamp::index).collect(Collectors.toUnmodifiableSet());
    this.ofFrames = ofFrames;
  }

  @Override
  public boolean wants(FrameStamp stamp) {
    return indices.contains(stamp.index());
  }

  @Override
  public Optional<KnownFrames> known() {
    return Optional.of(this);
  }

  /** Rising. */
  List<FrameStamp> stamps() {
    return stamps;
  }

  int ofFrames() {
    return ofFrames;
  }
}
