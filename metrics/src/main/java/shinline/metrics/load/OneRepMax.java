package shinline.metrics.load;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Estimates of the load for one rep from the load and number of reps of a set taken to its limit.
 * They differ by several per cent and were made for two-legged lifts; beyond ten reps none is good.
 * One rep is its own maximum.
 *
 * <p>Formulas as they are commonly quoted in strength training texts. Each is a fraction, so that a
 * maximum for several reps is one division and exact where it comes out even.
 */
public enum OneRepMax {
  EPLEY {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(30L + reps);
    }

    @Override
    BigDecimal under(int reps) {
      return BigDecimal.valueOf(30);
    }
  },
  BRZYCKI {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(36);
    }

    @Override
    BigDecimal under(int reps) {
      return BigDecimal.valueOf(37L - reps);
    }
  },
  LOMBARDI {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(Math.pow(reps, 0.1));
    }

    @Override
    BigDecimal under(int reps) {
      return BigDecimal.ONE;
    }
  },
  LANDER {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(100);
    }

    @Override
    BigDecimal under(int reps) {
      return new BigDecimal("101.3")
          .subtract(new BigDecimal("2.67123").multiply(BigDecimal.valueOf(reps)));
    }
  },
  MAYHEW {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(100);
    }

    @Override
    BigDecimal under(int reps) {
      return BigDecimal.valueOf(52.2 + 41.9 * Math.exp(-0.055 * reps));
    }
  },
  OCONNER {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(40L + reps);
    }

    @Override
    BigDecimal under(int reps) {
      return BigDecimal.valueOf(40);
    }
  },
  WATHAN {
    @Override
    BigDecimal over(int reps) {
      return BigDecimal.valueOf(100);
    }

    @Override
    BigDecimal under(int reps) {
      return BigDecimal.valueOf(48.8 + 53.8 * Math.exp(-0.075 * reps));
    }
  };

  /** Beyond this Brzycki divides by zero and the others mean nothing. */
  public static final int MOST_REPS = 36;

  abstract BigDecimal over(int reps);

  abstract BigDecimal under(int reps);

  /** As written in a ladder file, for example {@code epley}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<OneRepMax> of(String word) {
    return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
  }

  /**
   * @param load load of the set
   * @param reps reps to the limit, 1 to 36
   */
  public Mass estimate(Mass load, int reps) {
    return repMaximum(load, reps, 1);
  }

  /**
   * The load for a number of reps to the limit.
   *
   * @param load load of the set
   * @param reps reps of the set, to the limit, 1 to 36
   * @param wanted reps of the maximum wanted, 1 to 36; as many as the set's give the set's load
   */
  public Mass repMaximum(Mass load, int reps, int wanted) {
    check(reps);
    check(wanted);
    if (reps == wanted) {
      return load;
    }
    BigDecimal over = load.value().multiply(top(reps)).multiply(bottom(wanted));
    BigDecimal under = bottom(reps).multiply(top(wanted));
    return new Mass(over.divide(under, MathContext.DECIMAL128), load.unit());
  }

  private BigDecimal top(int reps) {
    return reps == 1 ? BigDecimal.ONE : over(reps);
  }

  private BigDecimal bottom(int reps) {
    return reps == 1 ? BigDecimal.ONE : under(reps);
  }

  private static void check(int reps) {
    if (reps < 1 || reps > MOST_REPS) {
      throw new IllegalArgumentException(reps + " reps; 1 to " + MOST_REPS + " have an estimate");
    }
  }
}
