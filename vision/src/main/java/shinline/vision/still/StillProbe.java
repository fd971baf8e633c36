package shinline.vision.still;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.imageio.stream.ImageInputStream;
import shinline.vision.still.StillRefusal.PlainStillRefusal;

/** A look at a file before a decoder sees it: what it is goes by its first bytes, not its name. */
final class StillProbe {
  /** What Java puts in place of bytes of a name that it cannot read. */
  private static final char UNREAD = '\ufffd';

  private static final int HEAD_BYTES = 32;

  /** Brands of pictures coded as HEVC (ISO/IEC 23008-12). */
  private static final List<String> HEIC_BRANDS =
      List.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1");

  private StillProbe() {}

  /** The kinds of picture that can be read. */
  enum Kind {
    JPEG,
    PNG
  }

  /** What it is, or why it cannot be read. */
  sealed interface Answer {
    default <T> T fold(Function<Kind, T> kind, Function<PlainStillRefusal, T> refused) {
      return this instanceof Is i ? kind.apply(i.kind()) : refused.apply(((Not) this).why());
    }
  }

  record Is(Kind kind) implements Answer {}

  record Not(PlainStillRefusal why) implements Answer {}

  /** Why there is no file to read; empty when there is. */
  static Optional<PlainStillRefusal> noFile(Path file) {
    if (!Files.exists(file)) {
      boolean unread = file.toString().indexOf(UNREAD) >= 0;
      return Optional.of(unread ? PlainStillRefusal.NAME_NOT_TEXT : PlainStillRefusal.MISSING);
    }
    if (Files.isDirectory(file)) {
      return Optional.of(PlainStillRefusal.FOLDER);
    }
    if (!Files.isRegularFile(file)) {
      return Optional.of(PlainStillRefusal.PIPE);
    }
    return Files.isReadable(file) ? Optional.empty() : Optional.of(PlainStillRefusal.NOT_PERMITTED);
  }

  static Answer kind(ImageInputStream in) throws IOException {
    byte[] head = new byte[HEAD_BYTES];
    int n = 0;
    for (int more = in.read(head, 0, HEAD_BYTES);
        more > 0;
        more = in.read(head, n, HEAD_BYTES - n)) {
      n += more;
    }
    if (n == 0) {
      return new Not(PlainStillRefusal.EMPTY);
    }
    String start = new String(head, 0, n, StandardCharsets.ISO_8859_1);
    if (start.startsWith("\u00ff\u00d8\u00ff")) {
      return new Is(Kind.JPEG);
    }
    if (start.startsWith("\u0089PNG\r\n\u001a\n")) {
      return new Is(Kind.PNG);
    }
    return new Not(other(start));
  }

  private static PlainStillRefusal other(String start) {
    if (start.startsWith("ftyp", 4)) {
      String brand = start.substring(8, Math.min(start.length(), 12));
      if (HEIC_BRANDS.contains(brand)) {
        return PlainStillRefusal.HEIC;
      }
      return brand.startsWith("avi") ? PlainStillRefusal.OTHER_PICTURE : PlainStillRefusal.FILM;
    }
    if (start.startsWith("moov", 4) || start.startsWith("\u001aE\u00df\u00a3")) {
      return PlainStillRefusal.FILM;
    }
    boolean picture =
        start.startsWith("GIF8")
            || start.startsWith("BM")
            || start.startsWith("II*\0")
            || start.startsWith("MM\0*")
            || (start.startsWith("RIFF") && start.startsWith("WEBP", 8));
    return picture ? PlainStillRefusal.OTHER_PICTURE : PlainStillRefusal.NO_PICTURE;
  }
}
