package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Headers as ITU-T H.264 7.3.1 lays them out: one zero bit, two of the mark, five of the type. */
final class ReferenceMarkTest {
  private static final byte[] FOUR_BYTE_LENGTHS = {1, 100, 0, 31, (byte) 0xFF};
  private static final int EXTRA_INFORMATION = 6;
  private static final int SLICE = 1;

  private final ReferenceMark marks = new ReferenceMark(FOUR_BYTE_LENGTHS);

  private static byte header(int mark, int type) {
    return (byte) (mark << 5 | type);
  }

  @Test
  void readsTheSlicesMark() {
    assertThat(marks.unreferenced(new byte[] {0, 0, 0, 2, header(0, SLICE), 9})).isTrue();
    assertThat(marks.unreferenced(new byte[] {0, 0, 0, 2, header(2, SLICE), 9})).isFalse();
  }

  @Test
  void passesOverWhatIsNoSlice() {
    byte[] packet = {0, 0, 0, 2, header(0, EXTRA_INFORMATION), 7, 0, 0, 0, 2, header(3, SLICE), 9};
    assertThat(marks.unreferenced(packet)).isFalse();
    packet[10] = header(0, SLICE);
    assertThat(marks.unreferenced(packet)).isTrue();
  }

  @Test
  void whatCannotBeReadIsReferenced() {
    assertThat(marks.unreferenced(new byte[] {})).isFalse();
    assertThat(marks.unreferenced(new byte[] {(byte) 0xFF, -1, -1, -1, header(0, 6), 1})).isFalse();
    assertThat(new ReferenceMark(new byte[] {}).unreferenced(new byte[] {0, 0, 0, 1, 1})).isFalse();
  }

  @Test
  void aWholePacketIsUnitsToItsEndAndAllSlicesCount() {
    byte[] packet = {0, 0, 0, 2, header(0, SLICE), 7, 0, 0, 0, 2, header(0, SLICE), 9};
    assertThat(whole(packet)).isTrue();
    packet[10] = header(1, SLICE);
    assertThat(whole(packet)).isFalse();
    packet[10] = header(0, EXTRA_INFORMATION);
    assertThat(whole(packet)).isTrue();
    packet[4] = header(0, EXTRA_INFORMATION);
    assertThat(whole(packet)).isFalse();
  }

  @Test
  void aPacketOfAnotherLengthThanItsUnitsIsNotWhole() {
    byte[] packet = {0, 0, 0, 2, header(0, SLICE), 7};
    assertThat(whole(packet)).isTrue();
    for (int length = 0; length < packet.length; length++) {
      assertThat(whole(Arrays.copyOf(packet, length))).isFalse();
    }
    assertThat(whole(Arrays.copyOf(packet, packet.length + 1))).isFalse();
    packet[0] = -1;
    assertThat(whole(packet)).isFalse();
    assertThat(whole(new byte[] {0, 0, 0, 2, header(0, SLICE), 7, 0, 0, 0, 0, 1})).isFalse();
    assertThat(new ReferenceMark(new byte[] {}).whollyUnreferenced(ByteBuffer.wrap(packet)))
        .isFalse();
  }

  private boolean whole(byte[] packet) {
    return marks.whollyUnreferenced(ByteBuffer.wrap(packet));
  }
}
