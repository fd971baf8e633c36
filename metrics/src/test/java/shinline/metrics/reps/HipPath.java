package shinline.metrics.reps;

import java.util.ArrayList;
import java.util.List;
import shinline.metrics.signal.Series;

/** A hip height with a closed form: rests, and moves shaped as a raised cosine. */
record HipPath(double first, List<Leg> legs) {

  record Leg(double fromS, double seconds, double from, double to) {}

  static HipPath from(double height) {
    return new HipPath(height, List.of());
  }

  HipPath to(double height, double seconds) {
    double from = legs.isEmpty() ? first : legs.get(legs.size() - 1).to;
    List<Leg> more = new ArrayList<>(legs);
    more.add(new Leg(lengthS(), seconds, from, height));
    return new HipPath(first, List.copyOf(more));
  }

  HipPath rest(double seconds) {
    return to(legs.isEmpty() ? first : legs.get(legs.size() - 1).to, seconds);
  }

  double lengthS() {
    return legs.stream().mapToDouble(Leg::seconds).sum();
  }

  double at(double timeS) {
    Leg leg = legs.get(0);
    for (Leg next : legs) {
      if (next.fromS <= timeS) {
        leg = next;
      }
    }
    double s = leg.seconds == 0 ? 1 : Math.min(1, (timeS - leg.fromS) / leg.seconds);
    return leg.from + (leg.to - leg.from) * (1 - Math.cos(Math.PI * s)) / 2;
  }

  Series sample(double rateHz) {
    int n = (int) Math.floor(lengthS() * rateHz + 1e-9) + 1;
    double[] t = new double[n];
    double[] h = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = i / rateHz;
      h[i] = at(t[i]);
    }
    return Series.of(t, h);
  }
}
