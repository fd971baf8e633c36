package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.vision.clip.ClipOpening.Refused;

/** What every clip reader must do. A reader's own test extends this. */
abstract class ClipReaderContract {

  /** Times are stored to 1/90000 s and rounded once each way. */
  private static final Offset<Double> ONE_TICK = within(1.2e-5);

  /** Lossy coding of plain colours, chroma at half size. */
  private static final int COLOUR_TOLERANCE = 24;

  @TempDir Path folder;

  abstract ClipReader reader();

  private ClipOpening open(Path file) {
    return reader().open(file, ClipOptions.defaults());
  }

  private Clip clip(Path file, ClipOptions options) {
    return clip(file, options, FrameChoice.ALL);
  }

  private Clip clip(Path file, ClipOptions options, FrameChoice choice) {
    return reader()
        .open(file, options, choice)
        .fold(
            ClipOpening.Opened::clip,
            refused -> {
              throw new AssertionError(refused.toString());
            });
  }

  private Clip clip(Path file) {
    return clip(file, ClipOptions.defaults());
  }

  private ClipRefusal refusal(Path file) {
    return open(file)
        .fold(
            opened -> {
              opened.clip().close();
              throw new AssertionError("opened " + file);
            },
            Refused::why);
  }

  private static List<Double> times(Clip clip) {
    List<Double> times = new ArrayList<>();
    for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
      assertThat(f.get().index()).isEqualTo(times.size());
      times.add(f.get().timeS());
    }
    return times;
  }

  private static void assertColour(Mat image, double x, double y, Scalar colour) {
    var pixel = image.ptr((int) (y * image.rows()), (int) (x * image.cols()));
    for (int channel = 0; channel < 3; channel++) {
      assertThat(pixel.get(channel) & 255)
          .as("channel %d at %.2f, %.2f", channel, x, y)
          .isCloseTo((int) colour.get(channel), within(COLOUR_TOLERANCE));
    }
  }

  private static void assertQuarters(Mat image, Scalar... clockwiseFromTopLeft) {
    assertColour(image, 0.25, 0.25, clockwiseFromTopLeft[0]);
    assertColour(image, 0.75, 0.25, clockwiseFromTopLeft[1]);
    assertColour(image, 0.75, 0.75, clockwiseFromTopLeft[2]);
    assertColour(image, 0.25, 0.75, clockwiseFromTopLeft[3]);
  }

  private static int grey(Mat image) {
    return image.ptr(image.rows() / 2, image.cols() / 2).get(1) & 255;
  }

  /** Brightness of picture n of the stepped fixtures, limited range widened to full. */
  private static int stepGrey(int n) {
    return (int) Math.min(255, Math.round(7 * n * 255 / 219.0));
  }

  @ParameterizedTest
  @CsvSource({"0, 96, 64", "90, 64, 96", "180, 96, 64", "270, 64, 96"})
  void turnsPicturesUpright(int clockwiseDeg, int width, int height) throws IOException {
    Path film =
        TestFilm.turned(TestFilm.quarters(folder.resolve("turned.mp4"), 96, 64, 4), clockwiseDeg);
    List<Scalar> colours = List.of(TestFilm.RED, TestFilm.GREEN, TestFilm.WHITE, TestFilm.BLUE);
    Scalar[] expected = new Scalar[4];
    for (int corner = 0; corner < 4; corner++) {
      expected[(corner + clockwiseDeg / 90) % 4] = colours.get(corner);
    }
    try (Clip clip = clip(film)) {
      assertThat(clip.info().rotationDeg()).isEqualTo(clockwiseDeg);
      assertThat(clip.info().widthPx()).isEqualTo(width);
      assertThat(clip.info().heightPx()).isEqualTo(height);
      Frame frame = clip.next().orElseThrow();
      assertThat(frame.image().cols()).isEqualTo(width);
      assertThat(frame.image().rows()).isEqualTo(height);
      assertQuarters(frame.image(), expected);
    }
  }

  @Test
  void unmirrorsMirroredPictures() throws IOException {
    Path film =
        TestFilm.withMatrix(
            TestFilm.quarters(folder.resolve("mirrored.mp4"), 96, 64, 2), -1, 0, 0, 1);
    try (Clip clip = clip(film)) {
      assertQuarters(
          clip.next().orElseThrow().image(),
          TestFilm.GREEN,
          TestFilm.RED,
          TestFilm.BLUE,
          TestFilm.WHITE);
    }
  }

  @Test
  void turnsMoreWhenAsked() throws IOException {
    Path film = TestFilm.quarters(folder.resolve("lying.mp4"), 96, 64, 2);
    try (Clip clip = clip(film, ClipOptions.defaults().turnedMore(1))) {
      assertQuarters(
          clip.next().orElseThrow().image(),
          TestFilm.BLUE,
          TestFilm.RED,
          TestFilm.GREEN,
          TestFilm.WHITE);
    }
  }

  @ParameterizedTest
  @CsvSource({"1.3333333, 128, 64", "0.5, 96, 128"})
  void makesPixelsSquare(double pixelAspect, int width, int height) throws IOException {
    Path film = TestFilm.wide(folder.resolve("wide.mov"), 96, 64, pixelAspect);
    try (Clip clip = clip(film)) {
      assertThat(clip.info().pixelAspect()).isCloseTo(pixelAspect, within(0.01));
      Mat image = clip.next().orElseThrow().image();
      assertThat(image.cols()).isEqualTo(width);
      assertThat(image.rows()).isEqualTo(height);
      assertQuarters(image, TestFilm.RED, TestFilm.GREEN, TestFilm.WHITE, TestFilm.BLUE);
    }
  }

  @Test
  void keepsTheTimesOfAVariableRate() throws IOException {
    double[] times = {0, 0.033, 0.0701, 0.1, 0.35, 0.36, 0.4, 1.25, 1.2833};
    Path film = TestFilm.moving(folder.resolve("vfr.mp4"), times);
    try (Clip clip = clip(film)) {
      List<Double> read = times(clip);
      assertThat(read).hasSize(times.length);
      for (int n = 0; n < times.length; n++) {
        assertThat(read.get(n)).isCloseTo(times[n], ONE_TICK);
      }
      // Long intervals alone are no damage.
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(times.length));
    }
  }

  @Test
  void firstPictureIsAtZero() throws IOException {
    Path film = TestFilm.moving(folder.resolve("late.mp4"), 2.5, 2.6, 2.7);
    try (Clip clip = clip(film)) {
      assertThat(times(clip).get(2)).isCloseTo(0.2, ONE_TICK);
    }
  }

  @Test
  void dividesTimesBySlowMotion() throws IOException {
    Path film = TestFilm.moving(folder.resolve("slow.mp4"), TestFilm.evenTimes(17));
    try (Clip clip = clip(film, new ClipOptions(OptionalDouble.of(240), 1))) {
      assertThat(clip.info().slowMotionFactor()).isEqualTo(8);
      assertThat(times(clip).get(16)).isCloseTo(16 / 240.0, ONE_TICK);
      assertThat(clip.ending()).isInstanceOf(ClipEnding.Complete.class);
    }
  }

  @Test
  void refusesACaptureRateBelowThePlaybackRate() throws IOException {
    Path film = TestFilm.moving(folder.resolve("fast.mp4"), TestFilm.evenTimes(10));
    ClipOpening opening = reader().open(film, new ClipOptions(OptionalDouble.of(10), 1));
    assertThat(opening)
        .isInstanceOfSatisfying(
            Refused.class,
            refused -> assertThat(refused.why()).isInstanceOf(ClipRefusal.CaptureRateTooLow.class));
  }

  @Test
  void hintsAtSlowMotion() {
    Path film = TestFilm.fixture("capturefps.mp4");
    try (Clip clip = clip(film)) {
      assertThat(clip.info().slowMotionHint()).isEqualTo(OptionalDouble.of(240));
    }
    try (Clip clip = clip(film, new ClipOptions(OptionalDouble.of(240), 1))) {
      assertThat(clip.info().slowMotionHint()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"hevc8.mp4, 8", "hevc10.mov, 10"})
  void readsHevc(String name, int bits) {
    try (Clip clip = clip(TestFilm.fixture(name))) {
      assertThat(clip.info().codec()).isEqualTo("hevc");
      assertThat(clip.info().bitsPerSample()).isEqualTo(bits);
      assertQuarters(
          clip.next().orElseThrow().image(),
          TestFilm.RED,
          TestFilm.GREEN,
          TestFilm.WHITE,
          TestFilm.BLUE);
      assertThat(remaining(clip)).isEqualTo(14);
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(15));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "bframes.mp4, 0, 30",
    "editlist.mp4, 12, 18",
    "fragmented.mp4, 0, 30",
    "vp9.webm, 0, 30"
  })
  void showsPicturesInOrder(String name, int firstStep, int frames) {
    try (Clip clip = clip(TestFilm.fixture(name))) {
      for (int n = 0; n < frames; n++) {
        Frame frame = clip.next().orElseThrow();
        assertThat(grey(frame.image())).isCloseTo(stepGrey(firstStep + n), within(5));
        // Matroska keeps whole milliseconds.
        assertThat(frame.timeS()).isCloseTo(n / 30.0, within(0.001));
      }
      assertThat(clip.next()).isEmpty();
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(frames));
    }
  }

  @Test
  void tellsWhenTheEndIsMissing() throws IOException {
    Path whole = TestFilm.moving(folder.resolve("whole.mp4"), TestFilm.evenTimes(60));
    Path cut = TestFilm.cut(whole, folder.resolve("cut.mp4"), 0.6);
    try (Clip clip = clip(cut)) {
      int read = times(clip).size();
      assertThat(clip.ending())
          .isInstanceOfSatisfying(
              ClipEnding.EndedEarly.class,
              early -> {
                assertThat(early.framesRead()).isEqualTo(read).isBetween(20, 50);
                assertThat(early.framesExpected()).isEqualTo(60);
                assertThat(early.secondsExpected()).isCloseTo(2.0, within(0.01));
                assertThat(early.secondsRead()).isCloseTo((read - 1) / 30.0, within(0.001));
                assertThat(early.gaps()).isEmpty();
              });
    }
  }

  @Test
  void refusesAFilmCutBeforeItsIndex() {
    byte[] film = new byte[4000];
    System.arraycopy(
        "\0\0\0\u0014ftypisom\0\0\0\0isom\0\u0001\0\0mdat".getBytes(StandardCharsets.ISO_8859_1),
        0,
        film,
        0,
        28);
    assertThat(refusal(TestFilm.write(folder.resolve("cut.mp4"), film)))
        .isEqualTo(PlainRefusal.NO_INDEX);
  }

  @Test
  void tellsWhereTheMiddleIsDamaged() throws IOException {
    Path film =
        TestFilm.damaged(
            TestFilm.moving(folder.resolve("damaged.mp4"), TestFilm.evenTimes(90)), 0.45, 0.5);
    try (Clip clip = clip(film)) {
      int read = times(clip).size();
      assertThat(clip.ending())
          .isInstanceOfSatisfying(
              ClipEnding.Damaged.class,
              damaged -> {
                assertThat(damaged.framesRead()).isEqualTo(read).isLessThan(90);
                assertThat(damaged.framesExpected()).isEqualTo(90);
                int missing = damaged.gaps().stream().mapToInt(ClipEnding.Gap::framesMissing).sum();
                assertThat(missing).isEqualTo(90 - read);
                assertThat(damaged.gaps().get(0).fromS()).isBetween(1.0, 1.8);
              });
    }
  }

  @Test
  void refusesWhatIsNoClip() throws IOException {
    Random random = new Random(3);
    byte[] noise = new byte[20_000];
    random.nextBytes(noise);
    noise[0] = 0;
    byte[] text = "rep, depth\n1, 40\n".repeat(50).getBytes(StandardCharsets.UTF_8);
    assertThat(refusal(folder.resolve("none.mp4"))).isEqualTo(PlainRefusal.MISSING);
    assertThat(refusal(folder)).isEqualTo(PlainRefusal.FOLDER);
    assertThat(refusal(TestFilm.write(folder.resolve("e.mp4"), new byte[0])))
        .isEqualTo(PlainRefusal.EMPTY);
    assertThat(refusal(TestFilm.write(folder.resolve("t.mp4"), text)))
        .isEqualTo(new ClipRefusal.OtherContent(ClipRefusal.Content.TEXT));
    assertThat(refusal(TestFilm.write(folder.resolve("n.mp4"), noise)))
        .isEqualTo(PlainRefusal.UNKNOWN_FORMAT);
    Path picture = folder.resolve("p.mp4");
    try (Mat image = TestFilm.quarters(32, 32)) {
      Files.write(picture, TestFilm.png(image));
    }
    assertThat(refusal(picture))
        .isEqualTo(new ClipRefusal.OtherContent(ClipRefusal.Content.PICTURE));
    assertThat(refusal(TestFilm.fixture("sound.m4a"))).isEqualTo(PlainRefusal.SOUND_ONLY);
  }

  @Test
  void aGlanceSaysTheSameAsOpening() throws IOException {
    Path text =
        TestFilm.write(folder.resolve("t.mp4"), "rep, depth\n".getBytes(StandardCharsets.UTF_8));
    assertThat(reader().glance(text)).contains(new Refused(refusal(text)));
    Path none = folder.resolve("none.mp4");
    assertThat(reader().glance(none)).contains(new Refused(refusal(none)));
    assertThat(reader().glance(TestFilm.quarters(folder.resolve("q.mp4"), 32, 32, 2))).isEmpty();
  }

  @Test
  void followsNoAddressInAPlaylist() {
    byte[] playlist = "#EXTM3U\n#EXTINF:1,\nother.mp4\n".getBytes(StandardCharsets.UTF_8);
    assertThat(refusal(TestFilm.write(folder.resolve("list.mp4"), playlist)))
        .isEqualTo(new ClipRefusal.OtherContent(ClipRefusal.Content.TEXT));
  }

  /** What FFmpeg would open, and other files with it. */
  @Test
  void opensNoOtherContainer() {
    byte[] concat = "ffconcat version 1.0\nfile other.mp4\n\0".getBytes(StandardCharsets.UTF_8);
    byte[] avi = "RIFF\0\0\1\0AVI LIST\0\0\0\0hdrl".getBytes(StandardCharsets.ISO_8859_1);
    byte[] playlist = "\0#EXTM3U\n#EXTINF:1,\nother.mp4\n".getBytes(StandardCharsets.UTF_8);
    for (byte[] other : List.of(concat, avi, playlist)) {
      assertThat(refusal(TestFilm.write(folder.resolve("other.mp4"), other)))
          .isEqualTo(PlainRefusal.UNKNOWN_FORMAT);
    }
  }

  @Test
  void aPatternForPicturesIsAName() throws IOException {
    Path film = TestFilm.quarters(folder.resolve("film.mp4"), 32, 32, 2);
    Path one = folder.resolve("still%03d.jpg");
    assertThat(refusal(one)).isEqualTo(PlainRefusal.MISSING);
    // Named like a pattern or not, what is in the file counts.
    Files.copy(film, one);
    try (Clip clip = clip(one)) {
      assertThat(times(clip)).hasSize(2);
    }
  }

  @Test
  void stopsWhereTimesJump() throws IOException {
    Path film = TestFilm.moving(folder.resolve("gap.mp4"), 0, 0.1, 0.2, 120.2, 120.3);
    try (Clip clip = clip(film)) {
      assertThat(times(clip)).hasSize(3);
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Stopped(3, ClipEnding.StopCause.GAP));
    }
    ClipLimits wider = new ClipLimits(3600, 121, ClipLimits.USUAL.mostPixels());
    try (Clip clip = clip(film, ClipOptions.defaults().within(wider))) {
      assertThat(times(clip)).hasSize(5);
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(5));
    }
  }

  @Test
  void refusesWhatSaysItIsTooLongOrTooLarge() throws IOException {
    Path long200Hours =
        TestFilm.moving(
            folder.resolve("long.mp4"),
            IntStream.rangeClosed(0, 36).mapToDouble(n -> 20_000 * n).toArray());
    assertThat(refusal(long200Hours))
        .isInstanceOfSatisfying(
            ClipRefusal.TooLong.class, l -> assertThat(l.seconds()).isGreaterThan(200 * 3600));
    Path film = TestFilm.quarters(folder.resolve("film.mp4"), 64, 32, 2);
    ClipLimits small = new ClipLimits(60, 30, 64 * 32 - 1);
    assertThat(reader().open(film, ClipOptions.defaults().within(small)))
        .isEqualTo(new Refused(new ClipRefusal.TooLarge(64, 32, 64 * 32 - 1)));
  }

  @Test
  void refusesAPipeWithoutWaiting() throws Exception {
    Path pipe = folder.resolve("pipe.mp4");
    try {
      assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
    } catch (IOException e) {
      assumeTrue(false, "no pipes here");
    }
    assertThat(refusal(pipe)).isEqualTo(PlainRefusal.PIPE);
  }

  @Test
  void survivesNoiseAnywhereInAFilm() throws IOException {
    for (int seed = 0; seed < 12; seed++) {
      Path film = TestFilm.moving(folder.resolve("n" + seed + ".mp4"), TestFilm.evenTimes(8));
      byte[] bytes = Files.readAllBytes(film);
      Random random = new Random(seed);
      for (int i = 0; i < 40; i++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      Files.write(film, bytes);
      int frames =
          open(film)
              .fold(
                  opened -> {
                    try (Clip clip = opened.clip()) {
                      int read = times(clip).size();
                      assertThat(clip.ending().framesRead()).isEqualTo(read);
                      return read;
                    }
                  },
                  refused -> 0);
      assertThat(frames).isBetween(0, 8);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5})
  void readsTinyAndShortFilms(int frames) throws IOException {
    Path film = TestFilm.quarters(folder.resolve("tiny.mp4"), 16, 16, frames);
    try (Clip clip = clip(film)) {
      assertThat(clip.info().widthPx()).isEqualTo(16);
      assertThat(times(clip)).hasSize(frames);
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(frames));
    }
  }

  @Test
  void givesTheSamePicturesTwice() throws IOException {
    Path film = TestFilm.moving(folder.resolve("same.mp4"), TestFilm.evenTimes(12));
    List<byte[]> first = pictures(film);
    List<byte[]> second = pictures(film);
    assertThat(first).hasSize(12);
    for (int n = 0; n < first.size(); n++) {
      assertThat(second.get(n)).isEqualTo(first.get(n));
    }
  }

  private List<byte[]> pictures(Path film) {
    List<byte[]> pictures = new ArrayList<>();
    try (Clip clip = clip(film)) {
      for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
        pictures.add(TestFilm.png(f.get().image()));
      }
    }
    return pictures;
  }

  @Test
  void handsOutTheFramesThatAreWanted() throws IOException {
    Path film = TestFilm.moving(folder.resolve("pick.mp4"), TestFilm.evenTimes(20));
    List<byte[]> all = pictures(film);
    Set<Integer> wanted = Set.of(0, 3, 4, 18, 25);
    List<FrameStamp> asked = new ArrayList<>();
    List<Integer> seen = new ArrayList<>();
    FrameChoice choice =
        stamp -> {
          asked.add(stamp);
          return wanted.contains(stamp.index());
        };
    ClipOpening opening = reader().open(film, ClipOptions.defaults(), choice);
    try (Clip clip = ((ClipOpening.Opened) opening).clip()) {
      for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
        seen.add(f.get().index());
        assertThat(f.get().timeS()).isCloseTo(f.get().index() / 30.0, ONE_TICK);
        assertThat(TestFilm.png(f.get().image())).isEqualTo(all.get(f.get().index()));
      }
      // Passed over is not lost: the film was read to its end.
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(20));
      assertThat(clip.times().count()).isEqualTo(20);
      assertThat(clip.times().medianFps()).isCloseTo(30, within(30 * 30 * ONE_TICK.value));
    }
    assertThat(seen).containsExactly(0, 3, 4, 18);
    assertThat(asked)
        .extracting(FrameStamp::index)
        .isEqualTo(IntStream.range(0, 20).boxed().toList());
    assertThat(asked.get(7).timeS()).isCloseTo(7 / 30.0, ONE_TICK);
  }

  /** A picture with the digest of its bytes: equal when the pictures are. */
  private record Shot(FrameStamp stamp, int digest) {}

  private List<Shot> shots(Path film, FrameChoice choice) {
    List<Shot> shots = new ArrayList<>();
    ClipOpening opening = reader().open(film, ClipOptions.defaults(), choice);
    try (Clip clip = ((ClipOpening.Opened) opening).clip()) {
      for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
        FrameStamp stamp = new FrameStamp(f.get().index(), f.get().timeS());
        shots.add(new Shot(stamp, Arrays.hashCode(TestFilm.png(f.get().image()))));
      }
    }
    return shots;
  }

  /** Goes by time alone, keeps what it was asked, and can be asked ahead. */
  private record Timely(DoublePredicate wanted, List<FrameStamp> asked) implements FrameChoice {
    Timely(DoublePredicate wanted) {
      this(wanted, new ArrayList<>());
    }

    /** Wants each of so many pictures at 30 a second, beginning at one. */
    static Timely eachOf(int from, int step) {
      return new Timely(timeS -> Math.floorMod(Math.round(timeS * 30) - from, step) == 0);
    }

    @Override
    public boolean wants(FrameStamp stamp) {
      asked.add(stamp);
      return wanted.test(stamp.timeS());
    }

    @Override
    public Optional<FrameChoice> copy() {
      return Optional.of(new Timely(wanted));
    }
  }

  /** Pictures decoded in the order in which they are shown, and in others. */
  static List<String> filmsOfManyOrders() {
    return List.of(
        "groups.mp4",
        "opengroups.mp4",
        "opengroups-hevc.mp4",
        "bframes.mp4",
        "editlist.mp4",
        "fragmented.mp4",
        "hevc10.mov",
        "vp9.webm");
  }

  @ParameterizedTest
  @MethodSource("filmsOfManyOrders")
  void wantedPicturesAreTheSameWhateverIsPassedOver(String name) {
    Path film = TestFilm.fixture(name);
    List<Shot> all = shots(film, FrameChoice.ALL);
    for (int step = 1; step < 6; step++) {
      for (int from = 0; from < step; from++) {
        Timely choice = Timely.eachOf(from, step);
        assertThat(shots(film, choice))
            .isEqualTo(all.stream().filter(s -> choice.wanted.test(s.stamp().timeS())).toList());
        assertThat(choice.asked).isEqualTo(all.stream().map(Shot::stamp).toList());
        assertSameEnd(film, Timely.eachOf(from, step));
      }
    }
  }

  private void assertSameEnd(Path film, FrameChoice choice) {
    try (Clip whole = clip(film);
        Clip part = clip(film, ClipOptions.defaults(), choice)) {
      remaining(whole);
      remaining(part);
      assertThat(part.ending()).isEqualTo(whole.ending());
      assertThat(part.doubtful()).isEqualTo(whole.doubtful());
      assertThat(part.times().count()).isEqualTo(whole.times().count());
      assertThat(part.times().durationS()).isEqualTo(whole.times().durationS());
      assertThat(part.times().medianFps()).isEqualTo(whole.times().medianFps());
    }
  }

  @Test
  void whatNobodyWantsOrNeedsIsNotDecoded() throws IOException {
    Path film = Files.copy(TestFilm.fixture("groups.mp4"), folder.resolve("noise.mp4"));
    // The first few are decoded before it is known what comes.
    assertThat(TestFilm.damagedUnreferenced(film, 5)).isGreaterThan(10);
    try (Clip clip = clip(film)) {
      remaining(clip);
      assertThat(clip.ending()).isInstanceOf(ClipEnding.Damaged.class);
    }
    try (Clip clip = clip(film, ClipOptions.defaults(), Timely.eachOf(0, 60))) {
      assertThat(remaining(clip)).isEqualTo(1);
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(60));
      assertThat(clip.times().count()).isEqualTo(60);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"groups.mp4", "opengroups.mp4", "editlist.mp4", "fragmented.mp4"})
  void theSamplingAsksAheadAsItDecides(String name) {
    Path film = TestFilm.fixture(name);
    List<Shot> all = shots(film, FrameChoice.ALL);
    List<Heard> copies = new ArrayList<>();
    Heard real = new Heard(new FrameSampling(15, ClipPart.WHOLE), copies);
    List<Shot> sampled = shots(film, real);
    assertThat(sampled)
        .isEqualTo(all.stream().filter(s -> real.wanted.contains(s.stamp().index())).toList());
    assertThat(copies).hasSize(1);
    assertThat(copies.get(0).wanted).isEqualTo(real.wanted);
    assertThat(copies.get(0).told).isEqualTo(real.told).hasSize(all.size());
    assertThat(real.told).anyMatch(OptionalDouble::isPresent);
    assertSameEnd(film, new FrameSampling(15, ClipPart.WHOLE));
  }

  /** Keeps what a choice was told and what it answered. */
  private record Heard(
      FrameChoice inner, List<Heard> copies, List<OptionalDouble> told, List<Integer> wanted)
      implements FrameChoice {
    Heard(FrameChoice inner, List<Heard> copies) {
      this(inner, copies, new ArrayList<>(), new ArrayList<>());
    }

    @Override
    public boolean wants(FrameStamp stamp) {
      return wants(stamp, OptionalDouble.empty());
    }

    @Override
    public boolean wants(FrameStamp stamp, OptionalDouble insteadS) {
      told.add(insteadS);
      boolean wants = inner.wants(stamp, insteadS);
      if (wants) {
        wanted.add(stamp.index());
      }
      return wants;
    }

    @Override
    public Optional<FrameChoice> copy() {
      Heard copy = new Heard(inner.copy().orElseThrow(), copies);
      copies.add(copy);
      return Optional.of(copy);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"opengroups-hevc.mp4", "hevc10.mov", "vp9.webm"})
  void nothingIsKnownOfWhatOthersNeedWhereNothingIsPassedOver(String name) {
    Heard real = new Heard(new FrameSampling(15, ClipPart.WHOLE), new ArrayList<>());
    assertThat(shots(TestFilm.fixture(name), real)).isNotEmpty();
    assertThat(real.told).isNotEmpty().allMatch(OptionalDouble::isEmpty);
  }

  @Test
  void picturesPassedOverLeaveNoGap() {
    ClipLimits narrow = new ClipLimits(3600, 1.5 / 30, ClipLimits.USUAL.mostPixels());
    ClipOptions options = ClipOptions.defaults().within(narrow);
    try (Clip clip = clip(TestFilm.fixture("groups.mp4"), options, Timely.eachOf(0, 12))) {
      assertThat(remaining(clip)).isEqualTo(5);
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(60));
    }
  }

  @Test
  void aDamagedFilmIsGoneThroughWhole() throws IOException {
    Path film = Files.copy(TestFilm.fixture("groups.mp4"), folder.resolve("late.mp4"));
    TestFilm.damaged(film, 0.6, 0.65);
    List<Shot> all = shots(film, FrameChoice.ALL);
    for (int from = 0; from < 2; from++) {
      Timely choice = Timely.eachOf(from, 2);
      assertThat(shots(film, choice))
          .isEqualTo(all.stream().filter(s -> choice.wanted.test(s.stamp().timeS())).toList());
      assertThat(choice.asked).isEqualTo(all.stream().map(Shot::stamp).toList());
      assertSameEnd(film, Timely.eachOf(from, 2));
    }
  }

  @Test
  void aDamagedFilmGivesPicturesOfTheSameTimesWhateverIsPassedOver() throws IOException {
    byte[] whole = Files.readAllBytes(TestFilm.fixture("groups.mp4"));
    for (int seed = 0; seed < 60; seed++) {
      byte[] bytes = whole.clone();
      Random random = new Random(seed);
      for (int i = 0; i < 1 + seed / 6; i++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      Path film = TestFilm.write(folder.resolve("w" + seed + ".mp4"), bytes);
      if (open(film) instanceof ClipOpening.Opened opened) {
        opened.clip().close();
        List<Double> all = timesOf(film, FrameChoice.ALL);
        for (int step = 2; step < 4; step++) {
          Timely choice = Timely.eachOf(seed % step, step);
          assertThat(timesOf(film, choice))
              .as("seed %d", seed)
              .isEqualTo(all.stream().filter(choice.wanted::test).toList());
        }
      }
    }
  }

  private List<Double> timesOf(Path film, FrameChoice choice) {
    return shots(film, choice).stream().map(shot -> shot.stamp().timeS()).toList();
  }

  private void assertKnownFramesAreTheSame(Path film, long seed) {
    List<Shot> all = shots(film, FrameChoice.ALL);
    Random random = new Random(seed);
    for (double share : new double[] {0.03, 0.1, 0.5, 1}) {
      List<Shot> some = all.stream().filter(shot -> random.nextDouble() < share).toList();
      if (!some.isEmpty()) {
        List<FrameStamp> stamps = some.stream().map(Shot::stamp).toList();
        assertThat(shots(film, new KnownFrames(stamps, all.size())))
            .as("seed %d", seed)
            .isEqualTo(some);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("filmsOfManyOrders")
  void knownFramesAreTheSameAsByWalking(String name) {
    Path film = TestFilm.fixture(name);
    List<Shot> all = shots(film, FrameChoice.ALL);
    for (Shot shot : all) {
      assertThat(shots(film, new KnownFrames(List.of(shot.stamp()), all.size())))
          .containsExactly(shot);
    }
    for (int seed = 0; seed < 5; seed++) {
      assertKnownFramesAreTheSame(film, seed);
    }
  }

  @Test
  void knownFramesOfADamagedFilmAreTheSameAsByWalking() throws IOException {
    byte[] whole = Files.readAllBytes(TestFilm.fixture("groups.mp4"));
    for (int seed = 0; seed < 20; seed++) {
      byte[] bytes = whole.clone();
      Random random = new Random(seed);
      for (int i = 0; i < 1 + seed / 2; i++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      Path film = TestFilm.write(folder.resolve("d" + seed + ".mp4"), bytes);
      if (open(film) instanceof ClipOpening.Opened opened) {
        opened.clip().close();
        assertKnownFramesAreTheSame(film, seed);
      }
    }
  }

  @Test
  void knownFramesAreLeaptTo() throws IOException {
    Path film = TestFilm.moving(folder.resolve("leap.mp4"), TestFilm.evenTimes(100));
    Shot late = shots(film, FrameChoice.ALL).get(95);
    // Walking counts fewer pictures now, and would come to another one with this number.
    TestFilm.damaged(film, 0.4, 0.5);
    assertThat(shots(film, new KnownFrames(List.of(late.stamp()), 100))).containsExactly(late);
  }

  @Test
  void aKnownFrameOfAnotherTimeIsWalkedTo() throws IOException {
    Path film = TestFilm.moving(folder.resolve("walk.mp4"), TestFilm.evenTimes(70));
    List<Shot> all = shots(film, FrameChoice.ALL);
    List<FrameStamp> stamps =
        List.of(all.get(2).stamp(), new FrameStamp(40, 40.5 / 30), all.get(68).stamp());
    assertThat(shots(film, new KnownFrames(stamps, all.size())))
        .containsExactly(all.get(2), all.get(40), all.get(68));
  }

  @Test
  void aFilmEndsAfterItsLastKnownFrame() throws IOException {
    Path film = TestFilm.moving(folder.resolve("known.mp4"), TestFilm.evenTimes(40));
    assertThat(endingOf(film, new FrameStamp(3, 0.1), new FrameStamp(35, 35 / 30.0)))
        .isEqualTo(new ClipEnding.Complete(2));
    // One that is not there is looked for to the end.
    assertThat(endingOf(film, new FrameStamp(3, 0.1), new FrameStamp(90, 3)))
        .isEqualTo(new ClipEnding.Complete(40));
  }

  private ClipEnding endingOf(Path film, FrameStamp... known) {
    ClipOpening opening =
        reader().open(film, ClipOptions.defaults(), new KnownFrames(List.of(known), 40));
    try (Clip clip = ((ClipOpening.Opened) opening).clip()) {
      while (clip.next().isPresent()) {
        // Read to the end.
      }
      return clip.ending();
    }
  }

  @Test
  void picturesInACallersBufferAreKept() throws IOException {
    Path film = TestFilm.moving(folder.resolve("kept.mp4"), TestFilm.evenTimes(8));
    List<byte[]> all = pictures(film);
    try (Clip clip = clip(film);
        Mat first = new Mat();
        Mat second = new Mat()) {
      clip.nextInto(first).orElseThrow();
      clip.nextInto(second).orElseThrow();
      assertThat(remaining(clip)).isEqualTo(6);
      assertThat(TestFilm.png(first)).isEqualTo(all.get(0));
      assertThat(TestFilm.png(second)).isEqualTo(all.get(1));
    }
  }

  private static int remaining(Clip clip) {
    int left = 0;
    while (clip.next().isPresent()) {
      left++;
    }
    return left;
  }

  @Test
  void mayBeClosedEarlyAndTwice() throws IOException {
    Path film = TestFilm.moving(folder.resolve("early.mp4"), TestFilm.evenTimes(30));
    for (int read = 0; read < 8; read++) {
      Clip clip = clip(film);
      for (int n = 0; n < read; n++) {
        clip.next();
      }
      assertThatThrownBy(clip::ending).isInstanceOf(IllegalStateException.class);
      clip.close();
      clip.close();
      assertThatThrownBy(clip::next).isInstanceOf(IllegalStateException.class);
    }
  }

  @Test
  void readsNamesWithSpacesAndSigns() throws IOException {
    Path film = TestFilm.quarters(folder.resolve("s.mp4"), 32, 32, 2);
    Path named = folder.resolve("set 1 - 50% #2.mp4");
    Files.move(film, named);
    try (Clip clip = clip(named)) {
      assertThat(times(clip)).hasSize(2);
    }
  }
}
