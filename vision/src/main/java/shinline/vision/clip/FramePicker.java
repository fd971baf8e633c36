package shinline.vision.clip;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Fetches chosen pictures of a clip in a second pass. The clip is walked from its start, so that
 * places mean the same as in the first pass; pictures in between are decoded but not converted, and
 * the walk stops at the last one asked for.
 */
public final class FramePicker {
  private final SortedSet<Integer> indices;

  /**
   * @param indices 0-based places as in {@link Frame#index()}
   * @throws IllegalArgumentException for a negative place
   */
  public FramePicker(SortedSet<Integer> indices) {
    if (!indices.isEmpty() && indices.first() < 0) {
      throw new IllegalArgumentException("frame index must not be negative: " + indices.first());
    }
    this.indices = new TreeSet<>(indices);
  }

  /**
   * Shows the chosen pictures in rising order. The picture belongs to the clip and is overwritten
   * by the next: copy what is to be kept.
   *
   * @param clip from which nothing has been read yet; left open
   * @return the places the clip has no picture for, usually none
   */
  public SortedSet<Integer> pick(Clip clip, Consumer<Frame> visitor) {
    SortedSet<Integer> left = new TreeSet<>(indices);
    for (int place = 0; !left.isEmpty(); place++) {
      if (left.first() == place) {
        Optional<Frame> frame = clip.next();
        if (frame.isEmpty()) {
          break;
        }
        visitor.accept(frame.get());
        left.remove(place);
      } else if (clip.skip().isEmpty()) {
        break;
      }
    }
    return left;
  }
}
