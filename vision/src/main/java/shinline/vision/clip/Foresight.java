package shinline.vision.clip;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Tells which pictures will not be wanted before they are decoded. A choice is asked in the order
 * in which pictures are shown, and they are decoded in another; so the times of pictures are told
 * here as their packets are read, some way ahead of the decoder, and each is asked about as soon as
 * no earlier one can follow.
 *
 * <p>Given up for good at the first picture that does not come out as it was foreseen.
 */
final class Foresight {
  /**
   * A picture is decoded after at most so many that are shown later: more no decoder keeps (ITU-T
   * H.264 A.3.1, MaxDpbFrames).
   */
  static final int MOST_HELD_BACK = 16;

  private final FrameChoice choice;
  private final double secondsPerTick;

  /** Read, and not asked about yet; whether no other picture is decoded from it. */
  private final NavigableMap<Long, Boolean> unasked = new TreeMap<>();

  /** Of pictures asked about that have not come out yet. */
  private final NavigableMap<Long, Boolean> wishes = new TreeMap<>();

  /** What the choice was told of pictures asked about, for the one that decides in the end. */
  private final Map<Long, Double> insteads = new HashMap<>();

  private boolean begun;
  private boolean ended;
  private boolean givenUp;
  private long firstTick;
  private long askedTick = Long.MIN_VALUE;
  private int index;

  /**
   * @param choice asked ahead of the pictures: a copy of the one that decides in the end
   */
  Foresight(FrameChoice choice, double secondsPerTick) {
    this.choice = choice;
    this.secondsPerTick = secondsPerTick;
  }

  /** Foresees nothing. */
  static Foresight none() {
    Foresight none = new Foresight(FrameChoice.ALL, 0);
    none.giveUp();
    return none;
  }

  /** From now on foresees nothing. */
  void giveUp() {
    givenUp = true;
    unasked.clear();
    wishes.clear();
    insteads.clear();
  }

  boolean givenUp() {
    return givenUp;
  }

  /**
   * A picture to be shown at this time has been read; told in the order of decoding.
   *
   * @param unreferenced whether no other picture is decoded from it
   */
  void read(long tick, boolean unreferenced) {
    if (givenUp) {
      return;
    }
    if (tick <= askedTick || unasked.put(tick, unreferenced) != null) {
      giveUp();
    }
    askWhatIsSure();
  }

  /** Nothing more is going to be read. */
  void ended() {
    ended = true;
    askWhatIsSure();
  }

  /** The first picture of the film has come out, with this time. */
  void begin(long tick) {
    begun = true;
    firstTick = tick;
    // What should have come out before is damaged, or hidden.
    unasked.headMap(tick).clear();
    cameOut(tick);
    askWhatIsSure();
  }

  private void askWhatIsSure() {
    while (begun && unasked.size() > (ended ? 0 : MOST_HELD_BACK)) {
      askNext();
    }
  }

  private void askNext() {
    Map.Entry<Long, Boolean> asked = unasked.pollFirstEntry();
    askedTick = asked.getKey();
    if (asked.getValue() && !unasked.isEmpty() && !unasked.firstEntry().getValue()) {
      insteads.put(askedTick, seconds(unasked.firstKey()));
    }
    FrameStamp stamp = new FrameStamp(index, seconds(askedTick));
    index++;
    wishes.put(askedTick, choice.wants(stamp, insteadS(askedTick)));
  }

  private double seconds(long tick) {
    return (tick - firstTick) * secondsPerTick;
  }

  /** What the choice was told of the picture of this time when it was asked about it. */
  OptionalDouble insteadS(long tick) {
    Double insteadS = insteads.get(tick);
    return insteadS == null ? OptionalDouble.empty() : OptionalDouble.of(insteadS);
  }

  /** The choice that decides in the end has been asked about the picture of this time. */
  void decided(long tick) {
    insteads.remove(tick);
  }

  /** Whether it is sure that nobody wants the picture of this time. */
  boolean unwanted(long tick) {
    return Boolean.FALSE.equals(wishes.get(tick));
  }

  /** The picture of this time is passed over: it is not going to come out. */
  void passedOver(long tick) {
    wishes.remove(tick);
  }

  /** A picture has come out, with this time. Told of the first one by {@link #begin}. */
  void cameOut(long tick) {
    if (!begun || givenUp) {
      return;
    }
    if (wishes.isEmpty() && !unasked.isEmpty()) {
      askNext();
    }
    if (wishes.isEmpty() || wishes.firstKey() != tick) {
      giveUp();
      return;
    }
    wishes.remove(tick);
  }

  /** No more pictures come out. */
  void cameToEnd() {
    if (!wishes.isEmpty() || !unasked.isEmpty()) {
      giveUp();
    }
  }
}
