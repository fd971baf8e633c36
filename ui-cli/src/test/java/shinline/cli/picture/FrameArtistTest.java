package shinline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Units;
import shinline.metrics.back.BackLine;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.geometry.Point;
import shinline.metrics.result.Flag;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.track.BodyPoint;

class FrameArtistTest {
  private static final double INSTANT_S = 0.55;

  private final SetScene scene = new SetScene(StandingSet.measured());

  @Test
  void linesLieOnTheirPoints() {
    BufferedImage image = draw(1);
    assertThat(at(image, 365, 335, 1)).isEqualTo(Ink.LEG);
    assertThat(at(image, 335, 275, 1)).isEqualTo(Ink.LEG);
    assertThat(at(image, 300, 205, 1)).isEqualTo(Ink.TRUNK);
    assertThat(at(image, 400, 350, 1)).isEqualTo(Ink.TOE_LINE);
    assertThat(at(image, 60, 60, 1)).isEqualTo(Color.GRAY);
  }

  @Test
  void linesFollowTheScaleOfThePicture() {
    BufferedImage image = draw(2);
    assertThat(at(image, 365, 335, 2)).isEqualTo(Ink.LEG);
    assertThat(at(image, 400, 350, 2)).isEqualTo(Ink.TOE_LINE);
  }

  @Test
  void aLineHasADarkEdgeSoThatItShowsOnAnyBackground() {
    BufferedImage image = draw(1);
    boolean dark = false;
    for (int x = 350; x < 380; x++) {
      dark |= new Color(image.getRGB(x, 335)).getGreen() < 50;
    }
    assertThat(dark).isTrue();
  }

  @Test
  void heelRiseIsMarkedAtTheHeel() {
    BufferedImage image = blank(1);
    Graphics2D g = image.createGraphics();
    Ink ink = new Ink(g, 4, new Rectangle(StandingSet.WIDTH, StandingSet.HEIGHT));
    RepResult rep = scene.reps().get(0);
    new FrameArtist(scene, Units.METRIC, new AffineTransform())
        .fault(ink, rep, rep.flags().get(0), INSTANT_S);
    g.dispose();
    double[] heel = StandingSet.PLACES.get(BodyPoint.FRONT_HEEL);
    int marked = 0;
    for (int y = (int) heel[1] - 20; y < heel[1] + 20; y++) {
      for (int x = (int) heel[0] - 20; x < heel[0] + 20; x++) {
        marked += new Color(image.getRGB(x, y)).equals(Ink.FAULT) ? 1 : 0;
      }
    }
    assertThat(marked).isGreaterThan(50);
  }

  @Test
  void aTagLeavesThoseBeforeItReadable() {
    BufferedImage image = blank(1);
    Graphics2D g = image.createGraphics();
    Ink ink = new Ink(g, 4, new Rectangle(StandingSet.WIDTH, StandingSet.HEIGHT));
    Point2D place = new Point2D.Double(300, 200);
    ink.tag("toe line", place, Ink.Hang.CENTRE, Ink.TOE_LINE, 4);
    int readable = count(image, Ink.TOE_LINE);
    ink.tag("now 35 degrees", place, Ink.Hang.CENTRE, Ink.FAULT, 4);
    g.dispose();
    assertThat(readable).isGreaterThan(50);
    assertThat(count(image, Ink.TOE_LINE)).isEqualTo(readable);
    assertThat(count(image, Ink.FAULT)).isGreaterThan(50);
  }

  private static int count(BufferedImage image, Color colour) {
    int n = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        n += image.getRGB(x, y) == colour.getRGB() ? 1 : 0;
      }
    }
    return n;
  }

  @Test
  void aBackIsDrawnAgainstTheAthletesOwnStanding() {
    List<Point> now = List.of(up(200, 300), up(170, 250), up(200, 200));
    List<Point> standing = List.of(up(200, 300), up(200, 250), up(200, 200));
    ClipReport.Measured report = StandingSet.measured();
    SetResult plain = report.set();
    SetScene rounded =
        new SetScene(
            new ClipReport.Measured(
                report.clip(),
                new SetResult(
                    plain.setUp(),
                    plain.target(),
                    plain.reps(),
                    plain.trend(),
                    plain.fading(),
                    plain.summary(),
                    plain.series(),
                    Map.of(),
                    Map.of(1, new BackLine(now, standing)),
                    List.of()),
                report.warnings()));
    BufferedImage image = blank(1);
    Graphics2D g = image.createGraphics();
    Ink ink = new Ink(g, 4, new Rectangle(StandingSet.WIDTH, StandingSet.HEIGHT));
    Flag flag = new Flag(FlagKind.BACK_ROUNDS, INSTANT_S, 16, 9, 4.5, MeasureUnit.PERCENT, 1);
    new FrameArtist(rounded, Units.METRIC, new AffineTransform())
        .fault(ink, rounded.reps().get(0), flag, INSTANT_S);
    g.dispose();
    assertThat(at(image, 185, 275, 1)).isEqualTo(Ink.FAULT);
    assertThat(at(image, 185, 225, 1)).isEqualTo(Ink.FAULT);
    int white = 0;
    for (int y = 200; y < 300; y++) {
      white += at(image, 200, y, 1).equals(Color.WHITE) ? 1 : 0;
    }
    assertThat(white).isGreaterThan(30);
  }

  private static Point up(double x, double y) {
    return new Point(x, StandingSet.HEIGHT - 1 - y);
  }

  @Test
  void whatWasNotSeenIsNotDrawn() {
    SetScene hips = new SetScene(StandingSet.measured(BodyPoint.FRONT_HIP));
    BufferedImage image = blank(1);
    Graphics2D g = image.createGraphics();
    Ink ink = new Ink(g, 4, new Rectangle(StandingSet.WIDTH, StandingSet.HEIGHT));
    new FrameArtist(hips, Units.METRIC, new AffineTransform()).lines(ink, INSTANT_S);
    g.dispose();
    assertThat(at(image, 365, 335, 1)).isEqualTo(Color.GRAY);
    assertThat(at(image, 300, 205, 1)).isEqualTo(Color.GRAY);
  }

  @Test
  void aTrunkThatWasNotMeasuredIsNotDrawn() {
    SetScene hidden = new SetScene(StandingSet.hiddenShoulders());
    BufferedImage image = blank(1);
    Graphics2D g = image.createGraphics();
    Ink ink = new Ink(g, 4, new Rectangle(StandingSet.WIDTH, StandingSet.HEIGHT));
    new FrameArtist(hidden, Units.METRIC, new AffineTransform()).lines(ink, INSTANT_S);
    g.dispose();
    assertThat(at(image, 300, 205, 1)).isEqualTo(Color.GRAY);
    assertThat(count(image, Ink.TRUNK)).isZero();
    assertThat(at(image, 335, 275, 1)).isEqualTo(Ink.LEG);
  }

  private BufferedImage draw(int scale) {
    BufferedImage image = blank(scale);
    Graphics2D g = image.createGraphics();
    Ink ink = new Ink(g, 4, new Rectangle(image.getWidth(), image.getHeight()));
    new FrameArtist(scene, Units.METRIC, AffineTransform.getScaleInstance(scale, scale))
        .lines(ink, INSTANT_S);
    g.dispose();
    return image;
  }

  private static BufferedImage blank(int scale) {
    BufferedImage image =
        new BufferedImage(
            scale * StandingSet.WIDTH, scale * StandingSet.HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.GRAY);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.dispose();
    return image;
  }

  private static Color at(BufferedImage image, int x, int y, int scale) {
    return new Color(image.getRGB(scale * x, scale * y));
  }
}
