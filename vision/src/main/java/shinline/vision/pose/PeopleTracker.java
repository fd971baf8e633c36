package shinline.vision.pose;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * Follows everybody in view, each under a number, and tells who goes down and up.
 *
 * <p>One person alone costs one look a frame, and a glance of the detector a second. With company
 * everybody is looked at in every frame until somebody has gone down farther than all others; from
 * then on those who stand still are looked at now and then only. Who moves most may change to the
 * end of the clip; since whoever moves is looked at in every frame, nothing of the right one is
 * missing then.
 */
final class PeopleTracker {
  /** Between two glances at the whole frame. */
  private static final double GLANCE_S = 1;

  /** More people than this are not followed: the nearest ones are the surest. */
  private static final int MOST_PEOPLE = 4;

  /** Those who stand still are looked at in every so many-th frame. */
  private static final int STANDING_STILL_EVERY = 5;

  /** Hips that kept within this share of stature for some seconds stand still. */
  private static final double STILL = 0.03;

  /** Hips that went down by this much while nobody else's did tell who trains. */
  private static final double GONE_DOWN = 0.06;

  /** Somebody who goes down and up at least this share as often may be the one who trains. */
  private static final double RIVAL = 0.6;

  /** Two whose hips are nearer to each other than this share of stature are one. */
  private static final double SAME_PERSON = 0.15;

  /** A newcomer needs legs that are seen: a rack has none. */
  private static final double NEWCOMERS_LEGS = 0.3;

  /** Places where nobody was after all are tried again after this long, then twice as long. */
  private static final double NOBODY_THERE_S = 3;

  /** And count as new when they were not tried for so long. */
  private static final double FORGOTTEN_AFTER_S = 5;

  /** So many looks tell where somebody is heading, and whether they went there. */
  private static final int TELLING_PACE = 3;

  /** Finds people in a whole frame, beside those who are painted over. */
  interface Detector {
    List<DetectedPerson> detect(Mat frame, List<Patch> paintedOver);
  }

  private final Detector detector;
  private final LandmarkLook landmarks;
  private PoseGate gate = new PoseGate();
  private final Map<Integer, Person> people = new LinkedHashMap<>();
  private final List<Nobody> nobodies = new ArrayList<>();
  private List<RegionOfInterest> bystanders = List.of();
  private double lastGlanceS = Double.NEGATIVE_INFINITY;
  private int looks;
  private int mover;

  /** The last looks at everybody, the newest first. */
  private final Deque<Earlier> earlier = new ArrayDeque<>();

  PeopleTracker(Detector detector, LandmarkLook landmarks) {
    this.detector = detector;
    this.landmarks = landmarks;
  }

  /** Somebody under a number. */
  private static final class Person {
    private final FollowedPerson path;
    private final VerticalTravel travel = new VerticalTravel();
    private double stature;
    private double lostX;
    private double lostY;

    Person(FollowedPerson path) {
      this.path = path;
    }

    void note(PoseSighting sighting, double timeS) {
      if (sighting instanceof PoseSighting.Found found) {
        BodyPose pose = new BodyPose(found);
        stature = path.staturePx();
        lostX = pose.hipX();
        lostY = pose.hipY();
        travel.add(timeS, -pose.hipY() / stature);
      }
    }

    boolean near(double x, double y, double share) {
      return Math.hypot(x - lostX, y - lostY) < share * stature;
    }
  }

  /** Everybody at a look. */
  private record Earlier(double timeS, PeopleInView people) {
    Optional<BodyPose> pose(int number) {
      return people.of(number).pose().map(BodyPose::new);
    }
  }

  /** A place where the detector sees somebody and the landmark model does not. */
  private record Nobody(double x, double y, double reachPx, double waitS, double untilS) {
    boolean holds(RegionOfInterest region) {
      return Math.hypot(region.centreX() - x, region.centreY() - y) < reachPx;
    }
  }

  /** See {@link PoseGate#pictureIsUpright}. */
  void pictureIsUpright() {
    gate.pictureIsUpright();
  }

  /** Forgets everybody: the next frame is of another clip or picture. */
  void beginAnew() {
    people.clear();
    nobodies.clear();
    bystanders = List.of();
    lastGlanceS = Double.NEGATIVE_INFINITY;
    looks = 0;
    mover = 0;
    earlier.clear();
    gate = new PoseGate();
  }

  PeopleInView look(Mat frame, double timeS) {
    looks++;
    Map<Integer, PoseSighting> seen = new LinkedHashMap<>();
    people.forEach(
        (number, person) -> {
          if (person.path.followed()) {
            seen.put(number, lookAt(number, person, frame, timeS));
          }
        });
    partTwins(seen);
    boolean somebodyLost = people.isEmpty() || !athlete().path.followed();
    if (somebodyLost || timeS - lastGlanceS >= GLANCE_S) {
      lastGlanceS = timeS;
      glance(frame, timeS, seen);
    }
    people.forEach(
        (number, person) -> {
          PoseSighting sighting =
              seen.computeIfAbsent(
                  number,
                  n ->
                      new PoseSighting.NobodyFound(
                          bystanders.isEmpty() && nobodies.isEmpty()
                              ? PoseSighting.Reason.NO_PERSON_DETECTED
                              : PoseSighting.Reason.NO_POSE_IN_REGION));
          person.note(sighting, timeS);
        });
    if (people.isEmpty()) {
      PoseSighting.Reason reason =
          nobodies.isEmpty()
              ? PoseSighting.Reason.NO_PERSON_DETECTED
              : PoseSighting.Reason.NO_POSE_IN_REGION;
      seen.put(0, new PoseSighting.NobodyFound(reason));
    }
    chooseMover();
    PeopleInView now = new PeopleInView(mover, seen, unlooked(seen), bystanders, company());
    earlier.addFirst(new Earlier(timeS, now));
    if (earlier.size() > TELLING_PACE) {
      earlier.removeLast();
    }
    return now;
  }

  /** See {@link PoseEstimator#between}. */
  Optional<PeopleInView> between(Mat frame, double share, double farOfStature) {
    Map<Integer, PoseSighting> seen = new LinkedHashMap<>();
    boolean somebody = false;
    for (Map.Entry<Integer, Person> entry : people.entrySet()) {
      int number = entry.getKey();
      FollowedPerson path = entry.getValue().path;
      Optional<PoseSighting> sighting =
          strayPx(number) > farOfStature * path.staturePx()
              ? path.between(frame, share)
              : Optional.empty();
      somebody |= sighting.isPresent();
      seen.put(
          number, sighting.orElse(new PoseSighting.NobodyFound(PoseSighting.Reason.NOT_LOOKED_AT)));
    }
    return somebody
        ? Optional.of(new PeopleInView(mover, seen, unlooked(seen), bystanders, company()))
        : Optional.empty();
  }

  /** From where this person was heading; 0 where one of three looks did not see them. */
  private double strayPx(int number) {
    if (earlier.size() < TELLING_PACE) {
      return 0;
    }
    Iterator<Earlier> newest = earlier.iterator();
    Earlier here = newest.next();
    Earlier last = newest.next();
    Earlier before = newest.next();
    double pace = (here.timeS() - last.timeS()) / (last.timeS() - before.timeS());
    return here.pose(number)
        .flatMap(
            now ->
                last.pose(number)
                    .flatMap(
                        then ->
                            before.pose(number).map(earliest -> now.strayPx(earliest, then, pace))))
        .orElse(0.0);
  }

  private List<PoseSighting.Found> unlooked(Map<Integer, PoseSighting> seen) {
    List<PoseSighting.Found> there = new ArrayList<>();
    people.forEach(
        (number, person) -> {
          if (person.path.followed() && !(seen.get(number) instanceof PoseSighting.Found)) {
            person.path.last().ifPresent(pose -> there.add(pose.found()));
          }
        });
    return there;
  }

  private PeopleInView.Company company() {
    if (people.size() < 2) {
      return PeopleInView.Company.NOBODY;
    }
    int most = athlete().travel.times();
    return people.entrySet().stream()
            .anyMatch(
                e ->
                    e.getKey() != mover && e.getValue().travel.times() >= Math.max(2, RIVAL * most))
        ? PeopleInView.Company.MOVING_TOO
        : PeopleInView.Company.STANDING_BY;
  }

  private Person athlete() {
    Person person = people.get(mover);
    if (person == null) {
      throw new IllegalStateException("nobody has the number " + mover);
    }
    return person;
  }

  private PoseSighting lookAt(int number, Person person, Mat frame, double timeS) {
    boolean mayWait = number != mover && decided() && person.travel.range() < STILL;
    return mayWait && looks % STANDING_STILL_EVERY != 0
        ? new PoseSighting.NobodyFound(PoseSighting.Reason.NOT_LOOKED_AT)
        : person.path.look(frame, timeS);
  }

  /** Whether the mover went down and nobody else did. */
  private boolean decided() {
    return athlete().travel.times() > 0 || athlete().travel.range() >= GONE_DOWN;
  }

  private void chooseMover() {
    for (Map.Entry<Integer, Person> entry : people.entrySet()) {
      if (entry.getKey() == mover) {
        continue;
      }
      VerticalTravel other = entry.getValue().travel;
      VerticalTravel now = athlete().travel;
      boolean oftener =
          other.times() > now.times()
              || (other.times() == now.times() && other.travelled() > 2 * now.travelled());
      boolean first =
          now.times() == 0
              && other.times() == 0
              && other.range() >= GONE_DOWN
              && now.range() < other.range() / 2;
      if (oftener || first) {
        mover = entry.getKey();
      }
    }
  }

  /** Two paths that have run into one body: the one that was less sure of its size lets go. */
  private void partTwins(Map<Integer, PoseSighting> seen) {
    List<Integer> numbers = new ArrayList<>(seen.keySet());
    for (int a : numbers) {
      for (int b : numbers) {
        if (a < b
            && seen.get(a) instanceof PoseSighting.Found one
            && seen.get(b) instanceof PoseSighting.Found two
            && same(new BodyPose(one), new BodyPose(two))) {
          int lost = b == mover ? a : b;
          Person person = people.get(lost);
          if (person != null) {
            person.path.letGo();
            seen.put(lost, new PoseSighting.NobodyFound(PoseSighting.Reason.NO_POSE_IN_REGION));
          }
        }
      }
    }
  }

  private static boolean same(BodyPose a, BodyPose b) {
    return Math.hypot(a.hipX() - b.hipX(), a.hipY() - b.hipY())
        < SAME_PERSON * Math.max(a.staturePx(), b.staturePx());
  }

  /** Looks at the whole frame for those who were lost, and for newcomers. */
  private void glance(Mat frame, double timeS, Map<Integer, PoseSighting> seen) {
    nobodies.removeIf(place -> place.untilS() + FORGOTTEN_AFTER_S <= timeS);
    List<RegionOfInterest> others = new ArrayList<>();
    // Whoever is found is painted over, and one more may show.
    boolean found = true;
    while (found) {
      found = false;
      others.clear();
      for (DetectedPerson detected : detector.detect(frame, patches())) {
        others.add(detected.region());
        if (mayBegin(detected, timeS)) {
          if (begin(frame, detected, timeS, seen)) {
            found = true;
            break;
          }
          nobodyAt(detected.region(), timeS);
        }
      }
    }
    bystanders = List.copyOf(others);
  }

  /** Everybody who is followed. */
  private List<Patch> patches() {
    return people.values().stream()
        .filter(person -> person.path.followed())
        .flatMap(person -> person.path.last().stream())
        .flatMap(pose -> pose.patches().stream())
        .toList();
  }

  private boolean mayBegin(DetectedPerson detected, double timeS) {
    return nobodies.stream()
        .noneMatch(place -> place.untilS() > timeS && place.holds(detected.region()));
  }

  private void nobodyAt(RegionOfInterest region, double timeS) {
    if (people.isEmpty()) {
      return;
    }
    double waitS = NOBODY_THERE_S;
    for (Nobody place : nobodies) {
      waitS = place.holds(region) ? 2 * place.waitS() : waitS;
    }
    nobodies.removeIf(place -> place.holds(region));
    nobodies.add(
        new Nobody(region.centreX(), region.centreY(), region.sizePx() / 8, waitS, timeS + waitS));
  }

  /** Begins to follow somebody; not anybody who is followed already. */
  private boolean begin(
      Mat frame, DetectedPerson detected, double timeS, Map<Integer, PoseSighting> seen) {
    FollowedPerson path = new FollowedPerson(landmarks, gate);
    boolean alone = people.values().stream().noneMatch(p -> p.path.followed());
    PoseSighting sighting =
        path.begin(
            frame,
            detected,
            timeS,
            alone ? FollowedPerson.Effort.SEVERAL_REGIONS : FollowedPerson.Effort.ONE_REGION);
    if (!(sighting instanceof PoseSighting.Found found)) {
      return false;
    }
    BodyPose pose = new BodyPose(found);
    boolean twin =
        people.values().stream()
            .filter(p -> p.path.followed())
            .anyMatch(p -> p.path.last().filter(last -> same(last, pose)).isPresent());
    if (twin) {
      return false;
    }
    Optional<Integer> lost = lost(pose);
    if (lost.isEmpty()
        && !people.isEmpty()
        && (people.size() >= MOST_PEOPLE || (!alone && pose.legVisibility() < NEWCOMERS_LEGS))) {
      return false;
    }
    int number = lost.orElse(people.size());
    if (lost.isPresent()) {
      Person back = people.get(number);
      if (back != null) {
        back.path.takeOver(path);
      }
    } else {
      people.put(number, new Person(path));
    }
    seen.put(number, sighting);
    return true;
  }

  /** Of those who were lost, the nearest one of about this size. */
  private Optional<Integer> lost(BodyPose pose) {
    Optional<Integer> best = Optional.empty();
    double nearest = Double.POSITIVE_INFINITY;
    for (Map.Entry<Integer, Person> entry : people.entrySet()) {
      Person person = entry.getValue();
      double size = person.stature == 0 ? 1 : pose.staturePx() / person.stature;
      double distance = Math.hypot(pose.hipX() - person.lostX, pose.hipY() - person.lostY);
      if (!person.path.followed() && size > 0.65 && size < 1.5 && distance < nearest) {
        nearest = distance;
        best = Optional.of(entry.getKey());
      }
    }
    return best;
  }
}
