package shinline.cli.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/** Problems found so far; reading goes on so that the coach sees all of them at once. */
public final class Problems {
  /** Enough to work on; more would hide the first behind the last. */
  private static final int MOST = 20;

  private final List<Problem> found = new ArrayList<>();

  public void add(OptionalInt line, String field, String what, String whatToDo) {
    if (found.size() < MOST) {
      found.add(new Problem(line, field, what, whatToDo));
    }
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** In the order of the file; what concerns the file as a whole comes first. */
  public List<Problem> all() {
    return found.stream().sorted(Comparator.comparingInt(p -> p.line().orElse(0))).toList();
  }
}
