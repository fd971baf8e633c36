package shinline.cli.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextDigestTest {
  /** The example of FIPS 180 for one block (by memory). */
  @Test
  void theDigestOfThreeLetters() {
    assertThat(TextDigest.hex("abc"))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
