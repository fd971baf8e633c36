package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.DiscFinder;
import shinline.vision.scene.DiscFinderParameters;
import shinline.vision.scene.DiscFinding;
import shinline.vision.scene.DiscPlane;
import shinline.vision.scene.DiscSearch;
import shinline.vision.scene.FollowedDisc;
import shinline.vision.scene.PersonBox;

/**
 * Finds the near disc of a bar on the athlete's back and follows it. A disc about head and
 * shoulders is followed on trial; it is the bar's when it goes down and up with the hips, and a
 * thing of the room, passed over from then on, when the hips go and it stays.
 *
 * <p>Without a bar it is looked for a few times at the beginning and then now and again only, each
 * time in one of the picture's planes: a black disc and a red one take turns.
 */
public final class BarObserver implements AutoCloseable {
  /** How often it is looked for at first, and when that was in vain a few times. */
  private static final double SOON_S = 0.4;

  private static final double SELDOM_S = 2;
  private static final int SOON_LOOKS = 8;

  /** Unseen for so long it is lost, and looked for anew. */
  private static final double LOST_S = 1;

  private static final double USUAL_STATURE_M = 1.75;

  /** As in {@link DiscConsensus}: the athlete's box against the standing height. */
  private static final double BOX_OF_STATURE = 1.1;

  /**
   * The disc against one in the athlete's own plane: taller and shorter athletes, boxes that are
   * not as high as the body, and 0.7 m nearer to a camera 2.5 to 5 m away.
   */
  private static final double LEAST_OF_EXPECTED = 0.8;

  private static final double MOST_OF_EXPECTED = 1.75;

  /** Where head and shoulders are in the athlete's box, and how far about them it is sought. */
  private static final double SHOULDERS_DOWN = 0.22;

  private static final double REACH = 0.3;

  /** A place a thing of the room was at is passed over, share of its diameter. */
  private static final double SAME_PLACE = 0.4;

  private final double discM;
  private final DiscFinderParameters parameters = DiscFinderParameters.forFollowing();
  private final DiscFinder finder = new DiscFinder(parameters);
  private final List<DiscFinding.Found> ofTheRoom = new ArrayList<>();
  private final List<BarSighting> sightings = new ArrayList<>();
  private Optional<FollowedDisc> followed = Optional.empty();
  private SharedTravel together = new SharedTravel();
  private boolean ofTheBar;
  private double tallestPx;
  private double soughtS = Double.NEGATIVE_INFINITY;
  private double seenS;
  private int inVain;
  private int seeks;
  private int person;

  /**
   * @param discM true diameter of the disc, metres
   */
  public BarObserver(double discM) {
    this.discM = discM;
  }

  /** Told of every look; what was seen with somebody else before is dropped. */
  public void look(int frame, double timeS, Mat bgrUpright, PeopleInView people) {
    if (people.mover() != person) {
      person = people.mover();
      forget();
      ofTheBar = false;
      sightings.clear();
      inVain = 0;
    }
    PoseSighting sighting = people.ofMover();
    PoseShape.box(sighting).ifPresent(box -> tallestPx = Math.max(tallestPx, box.height()));
    if (followed.isPresent()) {
      follow(frame, timeS, bgrUpright, sighting, followed.get());
    } else if (timeS - soughtS >= (inVain < SOON_LOOKS ? SOON_S : SELDOM_S)) {
      soughtS = timeS;
      PoseShape.box(sighting).ifPresent(box -> seek(frame, timeS, bgrUpright, box));
    }
  }

  /**
   * Told of every frame between two looks, in the order of time: a disc that is followed is seen
   * there as well, and tells of quick movement what fewer looks do not.
   */
  public void between(int frame, double timeS, Mat bgrUpright) {
    followed.flatMap(disc -> disc.next(bgrUpright)).ifPresent(found -> see(frame, timeS, found));
  }

  private void seek(int frame, double timeS, Mat picture, PersonBox athlete) {
    double expected = discM / USUAL_STATURE_M * tallestPx / BOX_OF_STATURE;
    DiscSearch search =
        new DiscSearch(
            athlete.left() + athlete.width() / 2,
            athlete.top() + SHOULDERS_DOWN * tallestPx,
            REACH * tallestPx,
            Math.max(12, LEAST_OF_EXPECTED * expected),
            Math.max(24, MOST_OF_EXPECTED * expected));
    List<DiscPlane> planes = DiscPlane.of(picture);
    List<DiscPlane> turn = List.of(planes.get(seeks++ % planes.size()));
    if (finder.find(picture, search, turn) instanceof DiscFinding.Found found
        && !passedOver(found)) {
      followed = Optional.of(new FollowedDisc(parameters, picture, found));
      see(frame, timeS, found);
    } else {
      inVain++;
    }
  }

  private boolean passedOver(DiscFinding.Found found) {
    return ofTheRoom.stream()
        .anyMatch(
            room ->
                Math.hypot(room.centreX() - found.centreX(), room.centreY() - found.centreY())
                    < SAME_PLACE * room.diameterPx());
  }

  private void follow(
      int frame, double timeS, Mat picture, PoseSighting sighting, FollowedDisc disc) {
    Optional<DiscFinding.Found> next = disc.next(picture);
    if (next.isEmpty()) {
      if (timeS - seenS > LOST_S) {
        lose();
      }
      return;
    }
    see(frame, timeS, next.get());
    if (!ofTheBar && sighting instanceof PoseSighting.Found found) {
      together.add(PoseShape.hipRowPx(found), next.get().centreY());
      switch (together.tells(tallestPx / BOX_OF_STATURE)) {
        case TOGETHER -> ofTheBar = true;
        case APART -> {
          ofTheRoom.add(next.get());
          lose();
        }
        case TOO_LITTLE -> {}
      }
    }
  }

  private void see(int frame, double timeS, DiscFinding.Found found) {
    seenS = timeS;
    sightings.add(
        new BarSighting(
            frame, timeS, found.centreX(), found.centreY(), found.diameterPx(), found.roundness()));
  }

  /** What was followed is gone: of a bar what was seen of it stays, else it was none. */
  private void lose() {
    if (!ofTheBar) {
      sightings.clear();
      inVain++;
    }
    forget();
  }

  private void forget() {
    followed.ifPresent(FollowedDisc::close);
    followed = Optional.empty();
    together = new SharedTravel();
  }

  /** The disc in each look that shows it; empty when no bar was seen to go with the athlete. */
  public List<BarSighting> sightings() {
    return ofTheBar ? List.copyOf(sightings) : List.of();
  }

  @Override
  public void close() {
    forget();
  }
}
