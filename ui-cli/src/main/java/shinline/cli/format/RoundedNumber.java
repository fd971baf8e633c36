package shinline.cli.format;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;

/** Writes a number with fixed rounding. */
class RoundedNumber extends StdSerializer<Double> {
  private static final long serialVersionUID = 1L;

  private final int places;

  RoundedNumber(int places) {
    super(Double.class);
    this.places = places;
  }

  /** A pixel is a few millimetres: three places would round its length by a part in a thousand. */
  static final class OfScale extends RoundedNumber {
    private static final long serialVersionUID = 1L;

    OfScale() {
      super(5);
    }
  }

  @Override
  public void serialize(Double value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeNumber(Decimals.round(value, places));
  }
}
