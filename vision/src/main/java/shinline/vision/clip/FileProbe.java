package shinline.vision.clip;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import shinline.vision.clip.ClipOpening.Refused;
import shinline.vision.clip.ClipRefusal.Content;

/**
 * A look at a file before FFmpeg sees it. FFmpeg gives one and the same message for an empty file,
 * a text and a film without its index, waits at a pipe, and would open playlists, lists of pictures
 * and whatever else it knows; the coach needs to know which it is, and only films pass: mp4, mov,
 * mkv and webm, told by their first bytes, whatever the name.
 */
final class FileProbe {
  /** What Java puts in place of bytes of a name that it cannot read. */
  private static final char UNREAD = '\ufffd';

  private static final int HEAD_BYTES = 4096;

  /** Bytes of a box header with a 64-bit size, the longest there is. */
  private static final int LONG_BOX_HEADER = 16;

  /** More top-level boxes than any film has; bounds the walk through nonsense. */
  private static final int MAX_BOXES = 100_000;

  private static final Set<String> FILM_BOXES =
      Set.of("ftyp", "moov", "mdat", "wide", "free", "skip", "pnot", "styp", "moof", "uuid");

  /** What mkv and webm files begin with (RFC 9559, section 6: the EBML header's id). */
  private static final String MATROSKA = "\u001a\u0045\u00df\u00a3";

  private FileProbe() {}

  /** Why the file cannot be a readable clip, if a look is enough to tell. */
  static Optional<Refused> refusal(Path file) {
    if (!Files.exists(file)) {
      boolean unread = file.toString().indexOf(UNREAD) >= 0;
      return refused(unread ? PlainRefusal.NAME_NOT_TEXT : PlainRefusal.MISSING);
    }
    if (Files.isDirectory(file)) {
      return refused(PlainRefusal.FOLDER);
    }
    if (!Files.isRegularFile(file)) {
      return refused(PlainRefusal.PIPE);
    }
    if (!Files.isReadable(file)) {
      return refused(PlainRefusal.NOT_PERMITTED);
    }
    try (SeekableByteChannel channel = Files.newByteChannel(file)) {
      return refusal(channel);
    } catch (IOException | SecurityException e) {
      return refused(PlainRefusal.DISK_FAILS);
    }
  }

  /**
   * FFmpeg's name for the container of a file that is not refused: mp4 and mov, or mkv and webm.
   */
  static String container(Path file) {
    try (SeekableByteChannel channel = Files.newByteChannel(file)) {
      return isMatroska(read(channel, 0, MATROSKA.length())) ? "matroska" : "mov";
    } catch (IOException | SecurityException e) {
      // Opening will fail, and tell.
      return "mov";
    }
  }

  private static boolean isMatroska(byte[] head) {
    return new String(head, StandardCharsets.ISO_8859_1).startsWith(MATROSKA);
  }

  private static Optional<Refused> refusal(SeekableByteChannel channel) throws IOException {
    if (channel.size() == 0) {
      return refused(PlainRefusal.EMPTY);
    }
    byte[] head = read(channel, 0, HEAD_BYTES);
    Optional<Content> other = otherContent(head);
    if (other.isPresent()) {
      return refused(new ClipRefusal.OtherContent(other.get()));
    }
    if (head.length >= 8 && FILM_BOXES.contains(boxName(head, 4))) {
      return hasIndex(channel) ? Optional.empty() : refused(PlainRefusal.NO_INDEX);
    }
    return isMatroska(head) ? Optional.empty() : refused(PlainRefusal.UNKNOWN_FORMAT);
  }

  /** What well-known thing other than film or sound the bytes are. */
  private static Optional<Content> otherContent(byte[] head) {
    String start = new String(head, StandardCharsets.ISO_8859_1);
    if (start.startsWith("\u00ff\u00d8\u00ff")
        || start.startsWith("\u0089PNG")
        || start.startsWith("GIF8")
        || (start.startsWith("RIFF") && start.startsWith("WEBP", 8))
        || start.startsWith("ftyphei", 4)
        || start.startsWith("ftypmif1", 4)
        || start.startsWith("ftypavif", 4)) {
      return Optional.of(Content.PICTURE);
    }
    if (start.startsWith("PK\u0003\u0004") || start.startsWith("\u001f\u008b")) {
      return Optional.of(Content.ARCHIVE);
    }
    if (start.startsWith("%PDF")) {
      return Optional.of(Content.PDF);
    }
    return isText(head) ? Optional.of(Content.TEXT) : Optional.empty();
  }

  /** Text has no control bytes but white space; films have some within their first few bytes. */
  private static boolean isText(byte[] head) {
    for (byte b : head) {
      boolean whiteSpace = b == '\t' || b == '\n' || b == '\r' || b == '\f';
      if (b >= 0 && b < ' ' && !whiteSpace) {
        return false;
      }
    }
    return true;
  }

  /** Walks the top-level boxes of an mp4 or mov file, looking for a whole {@code moov}. */
  private static boolean hasIndex(SeekableByteChannel channel) throws IOException {
    long size = channel.size();
    long at = 0;
    for (int box = 0; box < MAX_BOXES && at + 8 <= size; box++) {
      byte[] header = read(channel, at, LONG_BOX_HEADER);
      if (header.length < 8) {
        return false;
      }
      ByteBuffer bytes = ByteBuffer.wrap(header);
      long length = Integer.toUnsignedLong(bytes.getInt(0));
      if (length == 1 && header.length == LONG_BOX_HEADER) {
        length = bytes.getLong(8);
      } else if (length == 0) {
        length = size - at;
      }
      if (boxName(header, 4).equals("moov")) {
        return length >= 8 && at + length <= size;
      }
      if (length < 8 || length > size - at) {
        return false;
      }
      at += length;
    }
    return false;
  }

  private static String boxName(byte[] bytes, int at) {
    return new String(bytes, at, 4, StandardCharsets.ISO_8859_1);
  }

  private static byte[] read(SeekableByteChannel channel, long from, int atMost)
      throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate((int) Math.min(atMost, channel.size() - from));
    channel.position(from);
    while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
      // A channel may give fewer bytes than asked for.
    }
    byte[] bytes = new byte[buffer.position()];
    buffer.flip().get(bytes);
    return bytes;
  }

  private static Optional<Refused> refused(ClipRefusal why) {
    return Optional.of(new Refused(why));
  }
}
