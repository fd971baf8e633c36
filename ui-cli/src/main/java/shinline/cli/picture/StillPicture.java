package shinline.cli.picture;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import shinline.cli.text.Units;
import shinline.cli.text.VerdictWords;
import shinline.cli.words.Words;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.RepResult;

/** One drawn-on frame with its words above it, cut to the athlete. */
final class StillPicture {
  /** A main line's width, share of the picture's mean side. */
  private static final double LINE_SHARE = 0.0075;

  /** A picture beside the one that matters is smaller. */
  private static final double BESIDE_SIDE_PX = 260;

  private static final double TITLE_SIZE = 7;
  private static final double SMALL_SIZE = 4.8;
  private static final Color BAND = new Color(0x14181D);
  private static final Color SMALL_TEXT = new Color(0xD5DAE0);

  private final SetScene scene;
  private final Units units;

  StillPicture(SetScene scene, Units units) {
    this.scene = scene;
    this.units = units;
  }

  /** The bottom of a rep with its numbers. */
  RepPicture bottom(BufferedImage frame, double timeS, RepResult rep, int repsInSet) {
    Optional<String> shin = degrees(rep, Measure.SHIN);
    Optional<String> trunk = degrees(rep, Measure.TRUNK_LEAN);
    String title = Words.say("picture.bottom", rep.rep(), repsInSet);
    String alt = Words.say("picture.bottom.spoken", rep.rep());
    alt = shin.isPresent() ? Words.say("picture.bottom.shin", alt, shin.get()) : alt;
    alt = trunk.isPresent() ? Words.say("picture.bottom.trunk", alt, trunk.get()) : alt;
    Drawing drawing =
        (artist, ink) -> {
          artist.lines(ink, timeS);
          artist.numbers(ink, timeS, rep);
        };
    BufferedImage picture = compose(frame, timeS, title, VerdictWords.of(rep).orElse(""), drawing);
    return picture(picture, rep, Optional.empty(), Words.say("picture.spoken", alt));
  }

  /** A posture with all its angles; drawn on as a fault where the shin is off its target. */
  PosturePicture posture(BufferedImage photo, PostureResult posture, String title, String small) {
    boolean off = !posture.flags().isEmpty();
    Drawing drawing =
        (artist, ink) -> {
          artist.lines(ink, 0);
          if (off) {
            artist.shinOffTarget(ink, 0);
          }
          artist.numbers(ink, 0, posture);
          artist.otherAngles(ink, 0, posture);
        };
    BufferedImage picture = compose(photo, 0, title, small, drawing);
    String alt =
        Stream.of(title, small).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    return new PosturePicture(
        jpeg(picture), picture.getWidth(), picture.getHeight(), Words.say("picture.spoken", alt));
  }

  /** A fault with its number and limit. */
  RepPicture fault(BufferedImage frame, double timeS, RepResult rep, Flag flag) {
    FlagCaption caption = FlagCaption.of(flag, units);
    String where = Words.say("picture.fault.where", rep.rep(), flag.atS());
    Drawing drawing =
        (artist, ink) -> {
          artist.lines(ink, timeS);
          artist.fault(ink, rep, flag, timeS);
        };
    Optional<String> change = TrunkChange.of(scene, rep, flag).map(TrunkChange::words);
    String small =
        change
            .map(c -> Words.say("picture.fault.change", c, caption.limit(), where))
            .orElseGet(() -> Words.say("picture.fault", caption.limit(), where));
    BufferedImage picture = compose(frame, timeS, caption.title(), small, drawing);
    return picture(
        picture,
        rep,
        Optional.of(flag),
        change
            .map(
                c ->
                    Words.say(
                        "picture.fault.change.spoken", caption.title(), c, caption.limit(), where))
            .orElseGet(
                () -> Words.say("picture.fault.spoken", caption.title(), caption.limit(), where)));
  }

  /** The athlete shortly before or after a fault, smaller and with lines alone. */
  RepPicture beside(BufferedImage frame, double timeS, RepResult rep, Flag flag, Moment.When when) {
    String title = Words.of(when, "title", Math.abs(timeS - flag.atS()));
    Crop crop = Crop.around(scene, scene.poseInFrame(timeS), BESIDE_SIDE_PX);
    BufferedImage picture =
        compose(crop, frame, timeS, title, "", (artist, ink) -> artist.lines(ink, timeS));
    return picture(
        picture, rep, Optional.of(flag), Words.say("picture.beside.spoken", rep.rep(), title));
  }

  private static Optional<String> degrees(RepResult rep, Measure measure) {
    return rep.at(measure).measured().map(m -> String.format(Locale.ROOT, "%.0f°", m.value()));
  }

  @FunctionalInterface
  private interface Drawing {
    void draw(FrameArtist artist, Ink ink);
  }

  private BufferedImage compose(
      BufferedImage frame, double timeS, String title, String small, Drawing drawing) {
    return compose(
        Crop.around(scene, scene.poseInFrame(timeS)), frame, timeS, title, small, drawing);
  }

  private BufferedImage compose(
      Crop crop, BufferedImage frame, double timeS, String title, String small, Drawing drawing) {
    int w = crop.widthPx();
    int h = crop.heightPx();
    double unit = Math.max(2, LINE_SHARE * (w + h) / 2);
    int band = bandHeight(w, unit, title, small);
    BufferedImage picture = new BufferedImage(w, band + h, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = picture.createGraphics();
    try {
      crop.paint(g, frame, band);
      g.setClip(0, band, w, h);
      Ink ink = new Ink(g, unit, new Rectangle(0, band, w, h));
      AffineTransform toPicture = crop.transform(band);
      toPicture.concatenate(scene.toFrame(timeS));
      drawing.draw(new FrameArtist(scene, units, toPicture), ink);
      g.setClip(null);
      g.setColor(BAND);
      g.fillRect(0, 0, w, band);
      words(g, ink, w, title, small);
    } finally {
      g.dispose();
    }
    return picture;
  }

  private static int bandHeight(int width, double unit, String title, String small) {
    BufferedImage scratch = FrameImage.none();
    Graphics2D g = scratch.createGraphics();
    try {
      return words(g, new Ink(g, unit, new Rectangle(1, 1)), width, title, small);
    } finally {
      g.dispose();
    }
  }

  /** Writes the band and tells how high it is. */
  private static int words(Graphics2D g, Ink ink, int width, String title, String small) {
    double pad = 2.2 * ink.unit();
    double y = pad;
    g.setColor(Color.WHITE);
    g.setFont(ink.font(TITLE_SIZE));
    y = paragraph(g, title, pad, y, width - 2 * pad);
    g.setColor(SMALL_TEXT);
    g.setFont(ink.font(SMALL_SIZE));
    y = small.isEmpty() ? y : paragraph(g, small, pad, y, width - 2 * pad);
    return (int) Math.ceil(y + pad);
  }

  private static double paragraph(Graphics2D g, String text, double x, double top, double width) {
    FontMetrics metrics = g.getFontMetrics();
    double y = top;
    for (String line : wrap(text, metrics, width)) {
      g.drawString(line, (float) x, (float) (y + metrics.getAscent()));
      y += metrics.getAscent() + metrics.getDescent();
    }
    return y;
  }

  private static List<String> wrap(String text, FontMetrics metrics, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (!line.isEmpty() && metrics.stringWidth(line + " " + word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Large flat areas and thin lines: below this quality the lines get a halo. */
  private static final float QUALITY = 0.82f;

  private static RepPicture picture(
      BufferedImage image, RepResult rep, Optional<Flag> flag, String altText) {
    return new RepPicture(
        rep.rep(), flag.map(Flag::kind), jpeg(image), image.getWidth(), image.getHeight(), altText);
  }

  private static byte[] jpeg(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    } catch (IOException e) {
      throw new IllegalStateException("memory refuses a picture", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
