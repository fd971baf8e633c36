package shinline.cli.ladder;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.metrics.ladder.AdviceLimits;

/** The numbers of the rules of a ladder file. */
final class LimitsReader {
  private static final List<String> DAYS =
      List.of(
          "half-after-days",
          "less-after-days",
          "same-after-days",
          "raise-every-days",
          "good-for-days");
  private static final List<String> COUNTS =
      List.of("painless-sessions", "more-reps", "unclean-reps");
  private static final List<String> SHARES =
      List.of(
          "half-pct",
          "less-pct",
          "poor-pct",
          "step-back-pct",
          "next-target-pct",
          "gap-pct",
          "judged-pct");

  private final Map<String, Integer> whole = new HashMap<>();
  private final Map<String, BigDecimal> shares = new HashMap<>();

  /**
   * @param shipped what counts for a number the file leaves out
   */
  static Optional<AdviceLimits> read(Field field, Optional<AdviceLimits> shipped) {
    LimitsReader reader = new LimitsReader();
    shipped.ifPresent(reader::takeAll);
    List<String> known = List.of(DAYS, COUNTS, SHARES).stream().flatMap(List::stream).toList();
    field.fields(known).orElse(List.of()).forEach(reader::one);
    return reader.limits(field);
  }

  private void takeAll(AdviceLimits limits) {
    whole.put("half-after-days", limits.breaks().halfAfterDays());
    whole.put("less-after-days", limits.breaks().lessAfterDays());
    whole.put("same-after-days", limits.breaks().sameAfterDays());
    whole.put("raise-every-days", limits.raises().everyDays());
    whole.put("good-for-days", limits.goodForDays());
    whole.put("painless-sessions", limits.raises().painlessSessions());
    whole.put("more-reps", limits.raises().moreReps());
    whole.put("unclean-reps", limits.sets().uncleanAllowed());
    shares.put("half-pct", limits.breaks().halfPct());
    shares.put("less-pct", limits.breaks().lessPct());
    shares.put("poor-pct", limits.sets().poorPct());
    shares.put("step-back-pct", limits.stepBackPct());
    shares.put("next-target-pct", limits.nextTargetPct());
    shares.put("gap-pct", limits.raises().gapPct());
    shares.put("judged-pct", limits.sets().judgedPct());
  }

  private void one(Field field) {
    if (SHARES.contains(field.name())) {
      Numbers.percent(field).ifPresent(v -> shares.put(field.name(), v));
    } else {
      int least = DAYS.contains(field.name()) ? 1 : 0;
      Numbers.whole(field, least, 400).ifPresent(v -> whole.put(field.name(), v));
    }
  }

  private Optional<AdviceLimits> limits(Field field) {
    if (whole.size() < DAYS.size() + COUNTS.size() || shares.size() < SHARES.size()) {
      return Optional.empty();
    }
    if (number("half-after-days") < number("less-after-days")
        || number("less-after-days") < number("same-after-days")) {
      return field.wrong(Words.say("ladder-file.breaks"), Words.say("ladder-file.breaks.do"));
    }
    return Optional.of(
        new AdviceLimits(
            new AdviceLimits.Breaks(
                number("half-after-days"),
                number("less-after-days"),
                number("same-after-days"),
                share("half-pct"),
                share("less-pct")),
            new AdviceLimits.Raises(
                number("raise-every-days"),
                number("painless-sessions"),
                share("gap-pct"),
                number("more-reps")),
            new AdviceLimits.Sets(number("unclean-reps"), share("judged-pct"), share("poor-pct")),
            share("step-back-pct"),
            share("next-target-pct"),
            number("good-for-days")));
  }

  private int number(String name) {
    return whole.getOrDefault(name, 0);
  }

  private BigDecimal share(String name) {
    return shares.getOrDefault(name, BigDecimal.ZERO);
  }
}
