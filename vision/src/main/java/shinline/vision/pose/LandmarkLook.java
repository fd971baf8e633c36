package shinline.vision.pose;

import org.bytedeco.opencv.opencv_core.Mat;

/** One look of a landmark model at one region of a frame. */
interface LandmarkLook {

  /** What one look gave: the pose, whatever its flag, and the points for the next region. */
  record Pass(PoseSighting.Found pose, BodyCircle circle) {}

  Pass run(Mat frame, RegionOfInterest region, ImageFlip handedness);
}
