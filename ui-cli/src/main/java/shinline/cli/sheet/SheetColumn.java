package shinline.cli.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Columns of the sheet this program knows, those filled in each day first. */
enum SheetColumn {
  CLIP,
  ATHLETE,
  LEG,
  LOAD,
  DONE_REPS,
  CLEAN_REPS,
  PAIN,
  NOTE,
  DATE,
  HEIGHT,
  BENCH,
  STEP,
  SET,
  ASKED_SETS,
  ASKED_REPS,
  TARGET,
  TEMPO,
  DEPTH,
  LOAD_UNIT,
  LOAD_KIND,
  VEST,
  PURPOSE;

  /** As in the heading row, for example {@code done_reps}. */
  String heading() {
    return name().toLowerCase(Locale.ROOT);
  }

  static List<String> headings() {
    return Arrays.stream(values()).map(SheetColumn::heading).toList();
  }

  static List<String> needed() {
    return List.of(CLIP.heading(), ATHLETE.heading(), LEG.heading());
  }
}
