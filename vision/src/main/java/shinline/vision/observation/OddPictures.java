package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;
import org.jspecify.annotations.Nullable;
import shinline.vision.clip.DoubtfulPictures;

/**
 * Pictures unlike their neighbours: part of one shows something that neither the one before nor the
 * one after it shows, while those two agree. No body moves so; a decoder that patched over damage
 * without a word leaves such a trace.
 *
 * <p>The brightness of 16 × 9 blocks is compared. What stays wrong to the end of the clip is not
 * found: then the picture before is the odd one out, and only once.
 */
public final class OddPictures {
  private static final int ACROSS = 16;
  private static final int DOWN = 9;

  /** Every so many-th pixel of each way is enough for a block's brightness. */
  private static final int SPARSE = 10;

  /** Grey levels by which a block must leave both neighbours; a limb in front changes some too. */
  private static final double LEAVES = 30;

  /** Grey levels within which the neighbours agree. */
  private static final double AGREES = 8;

  /** Share of the blocks; a hand or a shank is in one or two of the 144 for one picture only. */
  private static final double SHARE = 0.05;

  private final List<DoubtfulPictures> odd = new ArrayList<>();
  private double @Nullable [] before;
  private double @Nullable [] last;
  private double beforeS;
  private double lastS;

  /** Told of every sampled picture, in their order. */
  public void look(double timeS, Mat bgrUpright) {
    double[] now = blocks(bgrUpright);
    if (before != null && last != null && before.length == now.length && odd(before, last, now)) {
      int newest = odd.size() - 1;
      if (newest >= 0 && odd.get(newest).toS() >= beforeS) {
        odd.set(newest, new DoubtfulPictures(odd.get(newest).fromS(), timeS));
      } else {
        odd.add(new DoubtfulPictures(beforeS, timeS));
      }
    }
    before = last;
    beforeS = lastS;
    last = now;
    lastS = timeS;
  }

  private static boolean odd(double[] before, double[] middle, double[] after) {
    int leaves = 0;
    for (int i = 0; i < middle.length; i++) {
      if (Math.abs(middle[i] - before[i]) > LEAVES
          && Math.abs(middle[i] - after[i]) > LEAVES
          && Math.abs(after[i] - before[i]) < AGREES) {
        leaves++;
      }
    }
    return leaves > SHARE * middle.length;
  }

  private static double[] blocks(Mat bgr) {
    try (Size sparse = new Size(ACROSS * SPARSE, DOWN * SPARSE);
        Size few = new Size(ACROSS, DOWN);
        Mat thin = new Mat();
        Mat small = new Mat();
        Mat grey = new Mat()) {
      opencv_imgproc.resize(bgr, thin, sparse, 0, 0, opencv_imgproc.INTER_NEAREST);
      opencv_imgproc.resize(thin, small, few, 0, 0, opencv_imgproc.INTER_AREA);
      opencv_imgproc.cvtColor(small, grey, opencv_imgproc.COLOR_BGR2GRAY);
      byte[] levels = new byte[ACROSS * DOWN];
      try (BytePointer data = grey.data()) {
        data.get(levels);
      }
      double[] blocks = new double[levels.length];
      for (int i = 0; i < blocks.length; i++) {
        blocks[i] = levels[i] & 0xff;
      }
      return blocks;
    }
  }

  /** From the sound picture before to the one after, in the order of time. */
  public List<DoubtfulPictures> found() {
    return List.copyOf(odd);
  }
}
