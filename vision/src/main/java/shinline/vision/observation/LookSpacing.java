package shinline.vision.observation;

/**
 * How closely a clip is looked at.
 *
 * @param every of the sampled frames every so many-th is looked at, and every twice so many-th
 *     while everybody stands or holds still; 1 to look at all
 * @param paceOfStature hips or shoulders farther than this from where they were heading are a
 *     change of pace, share of stature
 * @param stillOfStature hips, shoulders and knees within this of where they were a moment ago are
 *     still, share of stature
 */
public record LookSpacing(int every, double paceOfStature, double stillOfStature) {
  public LookSpacing {
    if (every < 1 || !(paceOfStature >= 0) || !(stillOfStature >= 0)) {
      throw new IllegalArgumentException(
          "every " + every + ", pace " + paceOfStature + ", still " + stillOfStature);
    }
  }
}
