package shinline.metrics.load;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Units a load is written in. */
public enum MassUnit {
  KG(BigDecimal.ONE),
  /** Exact by definition: the international yard and pound agreement, 1959. */
  LB(new BigDecimal("0.45359237"));

  private final BigDecimal kg;

  MassUnit(BigDecimal kg) {
    this.kg = kg;
  }

  /** One of this unit in kilograms, exact. */
  public BigDecimal kg() {
    return kg;
  }

  /** As written in files: {@code kg}, {@code lb}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<MassUnit> of(String word) {
    return Arrays.stream(values()).filter(u -> u.word().equalsIgnoreCase(word)).findFirst();
  }
}
