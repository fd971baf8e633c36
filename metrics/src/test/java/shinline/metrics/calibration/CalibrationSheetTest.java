package shinline.metrics.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shinline.metrics.calibration.CalibrationSheet.Source;
import shinline.metrics.calibration.CalibrationSheet.Value;
import shinline.metrics.synthetic.ShippedCalibration;

class CalibrationSheetTest {
  private static final CalibrationSheet SHEET = CalibrationSheet.of(ShippedCalibration.HEAVY);

  static Stream<Calibration> shipped() {
    return Stream.of(ShippedCalibration.HEAVY, ShippedCalibration.FULL);
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void whatIsWrittenDownIsReadBack(Calibration calibration) {
    assertThat(CalibrationSheet.of(calibration).calibration()).isEqualTo(calibration);
  }

  /** A number fitted to clips says on which; nothing is said without words on how. */
  @ParameterizedTest
  @MethodSource("shipped")
  void everyValueTellsWhereItComesFrom(Calibration calibration) {
    for (CalibrationKey key : CalibrationKey.values()) {
      CalibratedValue told = calibration.told(key);
      assertThat(told.what()).as(key.word()).isNotBlank();
      Provenance from = told.provenance();
      if (from.kind() == Provenance.Kind.FITTED) {
        assertThat(!from.clips().isEmpty() || from.how().contains("not kept"))
            .as(key.word())
            .isTrue();
      }
    }
  }

  /** The smaller model's points are coarser: nothing that stands for noise may be narrower. */
  @Test
  void theSmallerModelIsTrustedNoMore() {
    for (CalibrationKey key : CalibrationKey.values()) {
      String word = key.word();
      if (word.startsWith("interval.")) {
        assertThat(ShippedCalibration.FULL.value(key))
            .as(word)
            .isGreaterThanOrEqualTo(ShippedCalibration.HEAVY.value(key));
      }
    }
  }

  @Test
  void aMissingValueIsNamed() {
    rejected(without("heel-rise.limit"), "heel-rise.limit is missing");
  }

  @Test
  void anUnknownValueIsNamed() {
    Value known = SHEET.values().get(0);
    rejected(
        plus(
            new Value(
                "toe-curl.limit", BigDecimal.ONE, known.unit(), known.source(), "no such thing")),
        "no value is called toe-curl.limit");
  }

  @Test
  void aValueToldTwiceIsNamed() {
    Value known = SHEET.values().get(0);
    rejected(plus(known), known.key() + " is told twice");
  }

  @Test
  void anotherUnitIsRefused() {
    rejected(
        changed("hips-first.limit", v -> new Value(v.key(), v.value(), "cm", v.source(), v.what())),
        "hips-first.limit is in cm, and must be in °");
  }

  @Test
  void aValueOutOfItsRangeIsRefused() {
    rejected(
        changed(
            "hips-first.limit",
            v -> new Value(v.key(), BigDecimal.valueOf(-1), v.unit(), v.source(), v.what())),
        "hips-first.limit is -1.0 °, and must be from 0.0 to 90.0");
  }

  @Test
  void aSourceThatIsNotToldIsNamed() {
    rejected(
        changed(
            "hips-first.limit", v -> new Value(v.key(), v.value(), v.unit(), "hearsay", v.what())),
        "hips-first.limit names a source that is not told: hearsay");
  }

  @Test
  void aSourceNeedsADay() {
    List<Source> sources = new ArrayList<>(SHEET.sources());
    Source first = sources.get(0);
    sources.set(0, new Source(first.id(), first.kind(), first.how(), first.clips(), "last autumn"));
    rejected(
        new CalibrationSheet(SHEET.schema(), SHEET.model(), sources, SHEET.values()),
        "last autumn");
  }

  @Test
  void anotherFormatIsRefused() {
    rejected(
        new CalibrationSheet("shinline-result/1", "heavy", SHEET.sources(), SHEET.values()),
        "schema is not shinline-calibration/1");
  }

  @Test
  void aTriedValueKeepsItsMeaning() {
    Calibration tried =
        ShippedCalibration.HEAVY.trying(Map.of(CalibrationKey.HIPS_FIRST_LIMIT, 7.5));
    assertThat(tried.value(CalibrationKey.HIPS_FIRST_LIMIT)).isEqualTo(7.5);
    assertThat(tried.value(CalibrationKey.HEEL_RISE_LIMIT))
        .isEqualTo(ShippedCalibration.HEAVY.value(CalibrationKey.HEEL_RISE_LIMIT));
    assertThat(tried.told(CalibrationKey.HIPS_FIRST_LIMIT).what())
        .isEqualTo(ShippedCalibration.HEAVY.told(CalibrationKey.HIPS_FIRST_LIMIT).what());
  }

  private static void rejected(CalibrationSheet sheet, String because) {
    assertThatIllegalArgumentException()
        .isThrownBy(sheet::calibration)
        .withMessageContaining(because);
  }

  private static CalibrationSheet with(List<Value> values) {
    return new CalibrationSheet(SHEET.schema(), SHEET.model(), SHEET.sources(), values);
  }

  private static CalibrationSheet without(String key) {
    return with(SHEET.values().stream().filter(v -> !v.key().equals(key)).toList());
  }

  private static CalibrationSheet plus(Value value) {
    return with(Stream.concat(SHEET.values().stream(), Stream.of(value)).toList());
  }

  private static CalibrationSheet changed(
      String key, java.util.function.UnaryOperator<Value> change) {
    return with(
        SHEET.values().stream().map(v -> v.key().equals(key) ? change.apply(v) : v).toList());
  }
}
