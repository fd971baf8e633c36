package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import shinline.metrics.analysis.ClipObservations.DoubtfulSpan;
import shinline.metrics.plausibility.ImplausibleLooks;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.reps.Rep;
import shinline.metrics.result.Gap;
import shinline.metrics.result.RepJudgement.NotJudged;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;

/**
 * How well the set was seen: what was hidden, what no body can do, what a decoder patched up.
 *
 * @param raw the looks as the legs were told apart in them
 * @param implausible what was taken out of them
 * @param doubtful stretches of pictures that are not sound
 */
record SetSight(
    LegTrack raw,
    ImplausibleLooks implausible,
    ShoulderSight shoulders,
    List<DoubtfulSpan> doubtful) {

  /** A rep of which more than this share fails is not judged (definition, docs/measures.md). */
  private static final double MOST_FAILED = 1.0 / 3;

  SetSight {
    doubtful = List.copyOf(doubtful);
  }

  private static final BodyPoint[] NEEDED = {
    BodyPoint.FRONT_HIP, BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE
  };

  /** Why a value at the bottom is missing that needs some points. */
  Gap whyMissing(double fromS, double toS, BodyPoint... points) {
    for (BodyPoint point : points) {
      if (shoulders == ShoulderSight.HIDDEN && ofShoulders(point)) {
        return Gap.SHOULDERS_HIDDEN;
      }
    }
    return implausible.any(fromS, toS, points) ? Gap.IMPOSSIBLE : Gap.UNSEEN_AT_BOTTOM;
  }

  private static boolean ofShoulders(BodyPoint point) {
    return point == BodyPoint.NEAR_SHOULDER || point == BodyPoint.FAR_SHOULDER;
  }

  /** Share of a time that lies in doubtful pictures, 0…1. */
  double doubtfulShare(double fromS, double toS) {
    double inside = 0;
    for (DoubtfulSpan span : doubtful) {
      inside += Math.max(0, Math.min(toS, span.toS()) - Math.max(fromS, span.fromS()));
    }
    return toS > fromS ? Math.min(1, inside / (toS - fromS)) : 0;
  }

  /** Why a rep is not judged; empty when enough of it was seen. */
  Optional<NotJudged> whyNotJudged(Rep rep) {
    double fromS = rep.times().startS();
    double toS = rep.times().endS();
    if (doubtfulShare(fromS, toS) > MOST_FAILED) {
      return Optional.of(NotJudged.DAMAGED_PICTURES);
    }
    int looks = 0;
    int failed = 0;
    double[] t = raw.timeS();
    for (int i = 0; i < t.length; i++) {
      if (t[i] >= fromS && t[i] <= toS) {
        looks++;
        failed += failed(i) ? 1 : 0;
      }
    }
    return failed > MOST_FAILED * looks ? Optional.of(NotJudged.NOT_SEEN) : Optional.empty();
  }

  private boolean failed(int look) {
    boolean nobody = true;
    for (BodyPoint point : NEEDED) {
      if (implausible.at(look, point) || inDoubtfulPicture(look)) {
        return true;
      }
      nobody &= !raw.path(point).seen(look);
    }
    return nobody;
  }

  private boolean inDoubtfulPicture(int look) {
    double t = raw.timeS()[look];
    return doubtful.stream().anyMatch(span -> t >= span.fromS() && t <= span.toS());
  }
}
