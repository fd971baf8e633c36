package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;

/** People and models are made up; what is looked at, and who is chosen, is the tracker's own. */
final class PeopleTrackerTest {
  private static final double LOOKS_PER_S = 15;
  private static final double STATURE = 400;

  private final List<DrawnPerson> room = new ArrayList<>();
  private final PeopleTracker tracker = new PeopleTracker(this::detect, this::landmarks);
  private int runs;
  private boolean discHidesShoulders;
  private double timeS;

  /** One person for each in the room who is not painted over. */
  private List<DetectedPerson> detect(Mat frame, List<Patch> paintedOver) {
    return room.stream()
        .filter(p -> paintedOver.stream().noneMatch(patch -> holds(patch, p)))
        .map(
            p ->
                new DetectedPerson(
                    p.hipX() - 50, p.hipY() - 180, 100, 100, 0.9, p.circle().region()))
        .toList();
  }

  private static boolean holds(Patch patch, DrawnPerson p) {
    return p.hipX() > patch.left()
        && p.hipX() < patch.right()
        && p.hipY() > patch.top()
        && p.hipY() < patch.bottom();
  }

  /** The person nearest to the middle of the region. */
  private LandmarkLook.Pass landmarks(Mat frame, RegionOfInterest region, ImageFlip handedness) {
    runs++;
    Optional<DrawnPerson> nearest = Optional.empty();
    double least = 0.4 * region.sizePx();
    for (DrawnPerson p : room) {
      double away = Math.hypot(p.hipX() - region.centreX(), p.hipY() - region.centreY());
      if (away < least) {
        least = away;
        nearest = Optional.of(p);
      }
    }
    DrawnPerson seen = nearest.orElse(new DrawnPerson(0, 0, STATURE));
    boolean led = Math.abs(region.sizePx() / STATURE - 1.375) < 0.02;
    PoseSighting.Found pose =
        discHidesShoulders && led
            ? seen.onItsHead(region, 0.05)
            : seen.upright(region, nearest.isPresent() ? 1 : 0);
    return new LandmarkLook.Pass(pose, seen.circle());
  }

  private PeopleInView look() {
    timeS += 1 / LOOKS_PER_S;
    return tracker.look(new Mat(), timeS);
  }

  private static double depth(int look) {
    return 0.12 * STATURE * (1 - Math.cos(2 * Math.PI * look / (3 * LOOKS_PER_S)));
  }

  @Test
  void onePersonCostsOneLookAFrame() {
    room.add(new DrawnPerson(400, 300, STATURE));
    look();
    int before = runs;
    for (int i = 0; i < 60; i++) {
      assertThat(look().ofMover()).isInstanceOf(PoseSighting.Found.class);
    }
    assertThat(runs - before).isEqualTo(60);
  }

  @Test
  void theOneWhoGoesDownAndUpIsChosenThoughTheOtherIsSurer() {
    DrawnPerson helper = new DrawnPerson(700, 300, STATURE);
    DrawnPerson athlete = new DrawnPerson(300, 320, STATURE);
    room.add(helper);
    room.add(athlete);
    assertThat(look().mover()).isZero();
    PeopleInView last = look();
    for (int i = 0; i < 90; i++) {
      room.set(1, athlete.lower(depth(i)));
      last = look();
    }
    assertThat(last.mover()).isEqualTo(1);
    assertThat(last.company()).isEqualTo(PeopleInView.Company.STANDING_BY);
    assertThat(((PoseSighting.Found) last.ofMover()).at(BodyLandmark.LEFT_HIP).x())
        .isCloseTo(300, org.assertj.core.api.Assertions.within(0.1 * STATURE));
    assertThat(last.poses()).as("both are in the way of the room").hasSize(2);
  }

  @Test
  void whoStandsStillIsLookedAtNowAndThenOnly() {
    room.add(new DrawnPerson(300, 300, STATURE));
    room.add(new DrawnPerson(700, 300, STATURE));
    for (int i = 0; i < 60; i++) {
      room.set(0, new DrawnPerson(300, 300, STATURE).lower(depth(i)));
      look();
    }
    int before = runs;
    for (int i = 60; i < 120; i++) {
      room.set(0, new DrawnPerson(300, 300, STATURE).lower(depth(i)));
      look();
    }
    assertThat(runs - before).isBetween(70, 75);
  }

  @Test
  void twoWhoMoveAreSaid() {
    room.add(new DrawnPerson(300, 300, STATURE));
    room.add(new DrawnPerson(700, 300, STATURE));
    PeopleInView last = look();
    for (int i = 0; i < 180; i++) {
      room.set(0, new DrawnPerson(300, 300, STATURE).lower(depth(i)));
      room.set(1, new DrawnPerson(700, 300, STATURE).lower(depth(i + 10)));
      last = look();
    }
    assertThat(last.company()).isEqualTo(PeopleInView.Company.MOVING_TOO);
  }

  @Test
  void aBodyOnItsHeadIsLookedAtAgainAndTheUprightSquareKept() {
    room.add(new DrawnPerson(400, 300, STATURE));
    for (int i = 0; i < 10; i++) {
      look();
    }
    discHidesShoulders = true;
    assertThat(look().ofMover()).isInstanceOf(PoseSighting.Found.class);
    int before = runs;
    for (int i = 0; i < 10; i++) {
      PoseSighting.Found pose = (PoseSighting.Found) look().ofMover();
      assertThat(pose.at(BodyLandmark.LEFT_SHOULDER).y())
          .isLessThan(pose.at(BodyLandmark.LEFT_HIP).y());
      assertThat(pose.region().rotationRad()).isZero();
    }
    assertThat(runs - before).as("no second look as long as it is kept").isEqualTo(10);
  }

  @Test
  void somebodyWhoComesBackHasTheSameNumber() {
    DrawnPerson person = new DrawnPerson(400, 300, STATURE);
    room.add(person);
    look();
    room.clear();
    assertThat(look().ofMover()).isInstanceOf(PoseSighting.NobodyFound.class);
    room.add(person);
    PeopleInView back = look();
    assertThat(back.mover()).isZero();
    assertThat(back.people()).hasSize(1);
    assertThat(back.ofMover()).isInstanceOf(PoseSighting.Found.class);
  }

  @Test
  void betweenTwoLooksOnlyWhoChangedPaceIsLookedAt() {
    DrawnPerson athlete = new DrawnPerson(300, 300, STATURE);
    room.add(athlete);
    room.add(new DrawnPerson(700, 300, STATURE));
    for (int i = 0; i < 4; i++) {
      room.set(0, athlete.lower(0.03 * STATURE * i));
      look();
    }
    int before = runs;
    assertThat(tracker.between(new Mat(), 0.5, 0.02)).as("goes on as before").isEmpty();
    assertThat(runs).isEqualTo(before);

    look();
    before = runs;
    assertThat(tracker.between(new Mat(), 0.5, 0.04)).as("not far enough").isEmpty();
    PeopleInView there = tracker.between(new Mat(), 0.5, 0.02).orElseThrow();
    assertThat(runs - before).isEqualTo(1);
    PoseSighting.Found seen = (PoseSighting.Found) there.of(0);
    assertThat(seen.at(BodyLandmark.LEFT_HIP).y()).isEqualTo(300 + 0.09 * STATURE);
    assertThat(there.of(1))
        .isEqualTo(new PoseSighting.NobodyFound(PoseSighting.Reason.NOT_LOOKED_AT));
    assertThat(there.poses()).as("still in the way of the room").hasSize(2);
  }

  @Test
  void aLookBetweenIsCutBetweenTheTwoPlaces() {
    DrawnPerson athlete = new DrawnPerson(300, 300, STATURE);
    room.add(athlete);
    look();
    look();
    look();
    room.set(0, athlete.lower(0.06 * STATURE));
    look();
    PoseSighting.Found seen =
        (PoseSighting.Found) tracker.between(new Mat(), 0.5, 0.02).orElseThrow().ofMover();
    assertThat(seen.region().centreY()).isBetween(300.0, 300 + 0.06 * STATURE);
  }

  @Test
  void theNextRegionIsCutWhereThePersonWillBe() {
    DrawnPerson athlete = new DrawnPerson(300, 300, STATURE);
    room.add(athlete);
    double behind = 0;
    for (int i = 0; i < 20; i++) {
      room.set(0, athlete.lower(0.02 * STATURE * i));
      PoseSighting.Found seen = (PoseSighting.Found) look().ofMover();
      behind = 300 + 0.02 * STATURE * i - seen.region().centreY();
    }
    // The smoothed region is most of a step behind; about the last place it would be one more.
    assertThat(Math.abs(behind)).isLessThan(0.02 * STATURE);
  }

  @Test
  void whatIsSeenBetweenLeadsNothing() {
    List<PeopleInView> with = walkDown(Between.LOOKED_AT);
    tracker.beginAnew();
    timeS = 0;
    assertThat(walkDown(Between.PASSED_OVER)).isEqualTo(with);
  }

  private enum Between {
    LOOKED_AT,
    PASSED_OVER
  }

  private List<PeopleInView> walkDown(Between between) {
    DrawnPerson athlete = new DrawnPerson(300, 300, STATURE);
    List<PeopleInView> seen = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      room.clear();
      room.add(athlete.lower(0.004 * STATURE * i * i));
      seen.add(look());
      if (between == Between.LOOKED_AT && i > 1) {
        assertThat(tracker.between(new Mat(), 0.5, 0.005)).isPresent();
      }
    }
    return seen;
  }

  @Test
  void whatNoBodyCanBeIsNotTakenBetweenTwoLooks() {
    DrawnPerson athlete = new DrawnPerson(300, 300, STATURE);
    room.add(athlete);
    tracker.pictureIsUpright();
    for (int i = 0; i < 10; i++) {
      room.set(0, athlete.lower(i < 9 ? 0 : 0.03 * STATURE));
      look();
    }
    assertThat(tracker.between(new Mat(), 0.5, 0.02)).isPresent();
    discHidesShoulders = true;
    assertThat(tracker.between(new Mat(), 0.5, 0.02)).isEmpty();
  }
}
