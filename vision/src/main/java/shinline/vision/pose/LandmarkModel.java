package shinline.vision.pose;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.library.Cores;

/**
 * The landmark model on one region of one frame. Input 256×256; outputs 39 landmarks of 5 values
 * (the body's 33, 2 auxiliary points, 4 unused), a pose flag, and a 64×64 heatmap a landmark.
 */
final class LandmarkModel implements LandmarkLook, AutoCloseable {
  static final int INPUT_SIDE = 256;
  private static final int LANDMARKS = 39;
  private static final int VALUES = 5;
  private static final int MID_HIP = 33;
  private static final int SCALE_POINT = 34;

  private final OnnxModel model;
  private final RegionCrop crop;

  LandmarkModel(PoseModel size) {
    model = OnnxModel.load(size.landmarksFile(), INPUT_SIDE, Cores.here().forPose());
    crop = newCrop();
  }

  /** The cut both variants of the model take. */
  static RegionCrop newCrop() {
    return new RegionCrop(INPUT_SIDE, RegionCrop.Border.REPLICATE, 0, 1);
  }

  @Override
  public Pass run(Mat frame, RegionOfInterest region, ImageFlip handedness) {
    List<float[]> outputs = model.run(crop.cut(frame, region, handedness));
    Reading reading = new Reading(outputs.get(0), outputs.get(2), region, handedness);
    Map<BodyLandmark, Keypoint> keypoints = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      BodyLandmark named = handedness == ImageFlip.MIRRORED ? landmark.otherSide() : landmark;
      keypoints.put(
          named,
          reading.keypoint(
              landmark.ordinal(),
              landmark.ofLeg()
                  ? HeatmapRefinement.Search.ANYWHERE
                  : HeatmapRefinement.Search.NEAR));
    }
    Keypoint hip = reading.keypoint(MID_HIP, HeatmapRefinement.Search.NEAR);
    Keypoint scale = reading.keypoint(SCALE_POINT, HeatmapRefinement.Search.NEAR);
    return new Pass(
        new PoseSighting.Found(keypoints, outputs.get(1)[0], region),
        new BodyCircle(hip.x(), hip.y(), scale.x(), scale.y()));
  }

  private record Reading(
      float[] landmarks, float[] heatmap, RegionOfInterest region, ImageFlip handedness) {

    Keypoint keypoint(int number, HeatmapRefinement.Search search) {
      int at = VALUES * number;
      var raw =
          new HeatmapRefinement.Place(
              landmarks[at] / (double) INPUT_SIDE, landmarks[at + 1] / (double) INPUT_SIDE);
      var place = HeatmapRefinement.refine(raw, search, heatmap, LANDMARKS, number);
      double u = handedness == ImageFlip.MIRRORED ? 1 - place.u() : place.u();
      return new Keypoint(
          region.frameX(u, place.v()),
          region.frameY(u, place.v()),
          landmarks[at + 2] / INPUT_SIDE * region.sizePx(),
          Sigmoid.of(landmarks[at + 3]),
          Sigmoid.of(landmarks[at + 4]));
    }
  }

  @Override
  public void close() {
    crop.close();
    model.close();
  }
}
