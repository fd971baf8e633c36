package shinline.metrics.load;

/**
 * Estimates of the load for one rep from the load and number of reps of a set taken to its limit.
 * They differ by several per cent and were made for two-legged lifts; beyond ten reps none is good.
 * One rep is its own maximum.
 *
 * <p>Formulas as they are commonly quoted in strength training texts.
 */
public enum OneRepMax {
  EPLEY {
    @Override
    double factor(int reps) {
      return 1 + reps / 30.0;
    }
  },
  BRZYCKI {
    @Override
    double factor(int reps) {
      return 36 / (37.0 - reps);
    }
  },
  LOMBARDI {
    @Override
    double factor(int reps) {
      return Math.pow(reps, 0.1);
    }
  },
  LANDER {
    @Override
    double factor(int reps) {
      return 100 / (101.3 - 2.67123 * reps);
    }
  },
  MAYHEW {
    @Override
    double factor(int reps) {
      return 100 / (52.2 + 41.9 * Math.exp(-0.055 * reps));
    }
  },
  OCONNER {
    @Override
    double factor(int reps) {
      return 1 + 0.025 * reps;
    }
  },
  WATHAN {
    @Override
    double factor(int reps) {
      return 100 / (48.8 + 53.8 * Math.exp(-0.075 * reps));
    }
  };

  /** Beyond this Brzycki divides by zero and the others mean nothing. */
  public static final int MOST_REPS = 36;

  abstract double factor(int reps);

  /**
   * @param load load of the set
   * @param reps reps to the limit, 1 to 36
   */
  public Mass estimate(Mass load, int reps) {
    if (reps < 1 || reps > MOST_REPS) {
      throw new IllegalArgumentException(reps + " reps; 1 to " + MOST_REPS + " have an estimate");
    }
    return reps == 1 ? load : load.times(factor(reps));
  }
}
