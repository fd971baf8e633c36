package shinline.cli.text;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.WorkOn;

/**
 * What was found in a set, each thing once: in which reps, from which value to which, against what,
 * and where it is worst. Worst thing first.
 */
final class SetFindings {
  /** One thing in one rep: {@code off} says how far from its limit, for finding the worst. */
  private record Place(int rep, double value, double off, double atS) {}

  private final List<RepResult> reps;
  private final TextParts parts;
  private final List<String> lines = new ArrayList<>();

  /** Told already, so that a flag and a finding on the same thing are one line. */
  private final Set<Theme> told = new HashSet<>();

  private SetFindings(SetResult set, TextParts parts) {
    reps = set.reps();
    this.parts = parts;
  }

  /** Without full stops. */
  static List<String> of(SetResult set, TextParts parts) {
    SetFindings all = new SetFindings(set, parts);
    WorkOn.all(set.reps()).forEach(thing -> all.fault(thing.kind()));
    all.findings(f -> f instanceof Finding.Outside || f instanceof Finding.WrongRange);
    all.findings(f -> true);
    all.notJudged();
    return all.lines;
  }

  /** A fault that breaks a limit of the target is told as what was asked for and missed. */
  private void fault(FlagKind kind) {
    Set<Aspect> asked = aspects(kind);
    Predicate<Finding> same =
        f -> f instanceof Finding.Outside && f.aspect().filter(asked::contains).isPresent();
    List<Place> places = new ArrayList<>();
    Optional<Flag> example = Optional.empty();
    for (RepResult rep : reps) {
      if (rep.judgement().findings().stream().anyMatch(same)) {
        continue;
      }
      for (Flag flag : rep.flags()) {
        if (flag.kind() == kind) {
          example = Optional.of(flag);
          places.add(
              new Place(
                  rep.rep(), flag.value(), Math.abs(flag.value() - flag.limit()), flag.atS()));
        }
      }
    }
    findings(same);
    example.ifPresent(
        flag -> lines.add(measured(FlagWords.of(kind), places, flag.unit(), against(flag))));
  }

  /** A share says of what. */
  private String against(Flag flag) {
    String limit =
        Words.say(
            "text.found.limit",
            bound(flag.value() < flag.limit(), parts.quantity(flag.limit(), flag.unit())));
    return flag.unit() == MeasureUnit.PERCENT
        ? Words.say(
            "text.found.of", limit, Words.of(flag.kind(), "counts").toLowerCase(Locale.ROOT))
        : limit;
  }

  private static Set<Aspect> aspects(FlagKind kind) {
    return switch (kind) {
      case SHIN_OFF_TARGET -> EnumSet.of(Aspect.SHIN, Aspect.KNEE);
      case LOWERING_RUSHED -> EnumSet.of(Aspect.LOWERING);
      case HOLD_SKIPPED -> EnumSet.of(Aspect.HOLD);
      default -> EnumSet.noneOf(Aspect.class);
    };
  }

  private void findings(Predicate<Finding> wanted) {
    for (RepResult rep : reps) {
      for (Finding finding : rep.judgement().findings()) {
        if (wanted.test(finding) && told.add(Theme.of(finding))) {
          line(finding).ifPresent(lines::add);
        }
      }
    }
  }

  /** Findings of one theme are told together: alike in kind, in what they are on, and in side. */
  private record Theme(Class<? extends Finding> kind, Object on, Object side) {
    static Theme of(Finding finding) {
      return finding.fold(
          f -> new Theme(f.getClass(), f.limit().aspect(), f.limit()),
          f -> new Theme(f.getClass(), f.limit().aspect(), f.end()),
          f -> new Theme(f.getClass(), f.limit().aspect(), f.end()),
          f -> new Theme(f.getClass(), f.limit().aspect(), f.gap()),
          f -> new Theme(f.getClass(), f.asked(), f.asked()));
    }
  }

  private Optional<String> line(Finding example) {
    Theme theme = Theme.of(example);
    List<Integer> where = new ArrayList<>();
    List<Place> places = new ArrayList<>();
    double plusMinus = 0;
    for (RepResult rep : reps) {
      for (Finding finding : rep.judgement().findings()) {
        if (Theme.of(finding).equals(theme)) {
          where.add(rep.rep());
          if (finding instanceof Finding.Outside f) {
            places.add(new Place(rep.rep(), f.value(), f.by(), rep.bottomS()));
          } else if (finding instanceof Finding.TooClose f) {
            places.add(new Place(rep.rep(), value(f), f.beyond(), rep.bottomS()));
            plusMinus = Math.max(plusMinus, f.plusMinus());
          }
        }
      }
    }
    String sure =
        Amount.of(
            plusMinus,
            example.fold(
                f -> f.limit().unit(),
                f -> f.limit().unit(),
                f -> f.limit().unit(),
                f -> f.limit().unit(),
                f -> MeasureUnit.CENTIMETRES));
    return example.fold(
        met -> Optional.empty(),
        f ->
            Optional.of(
                measured(
                    JudgementWords.outside(f),
                    places,
                    f.limit().unit(),
                    asked(f.limit(), f.end()))),
        f ->
            Optional.of(
                measured(
                    JudgementWords.tooClose(f),
                    places,
                    f.limit().unit(),
                    Words.say("text.found.sure", asked(f.limit(), f.end()), sure))),
        f ->
            Optional.of(
                Words.say(
                    "text.found.why",
                    Words.say("finding.unmeasured", JudgementWords.name(f.limit())),
                    where(where),
                    JudgementWords.why(f))),
        f -> Optional.of(Words.say("text.found", Words.of(f.asked(), "missed"), where(where))));
  }

  private static double value(Finding.TooClose f) {
    double bound = f.limit().bound(f.end());
    return f.end() == Limit.End.MAX ? bound + f.beyond() : bound - f.beyond();
  }

  private void notJudged() {
    Map<String, List<Integer>> why = new LinkedHashMap<>();
    for (RepResult rep : reps) {
      rep.judgement()
          .notJudged()
          .ifPresent(
              n ->
                  why.computeIfAbsent(Words.of(n, "reason"), k -> new ArrayList<>())
                      .add(rep.rep()));
    }
    why.forEach((reason, of) -> lines.add(Words.say("text.found.reps", where(of), reason)));
  }

  private String measured(String what, List<Place> places, MeasureUnit unit, String against) {
    List<Integer> where = places.stream().map(Place::rep).distinct().toList();
    String least =
        parts.quantity(places.stream().mapToDouble(Place::value).min().orElseThrow(), unit);
    String most =
        parts.quantity(places.stream().mapToDouble(Place::value).max().orElseThrow(), unit);
    Place worst = places.stream().max((a, b) -> Double.compare(a.off(), b.off())).orElseThrow();
    return Words.say(
        "text.found.value",
        what,
        where(where),
        least.equals(most) ? most : Words.say("range.between", least, most),
        against,
        where.size() == 1
            ? Words.say("text.found.at", worst.atS())
            : Words.say("text.found.worst", worst.rep(), worst.atS()));
  }

  private String asked(Limit limit, Limit.End end) {
    return Words.say(
        "text.found.asked",
        bound(end == Limit.End.MIN, parts.quantity(limit.bound(end), limit.unit())));
  }

  private static String bound(boolean least, String limit) {
    return Words.say(least ? "range.at-least" : "range.at-most", limit);
  }

  private String where(List<Integer> of) {
    return Headline.reps(of, reps.size());
  }
}
