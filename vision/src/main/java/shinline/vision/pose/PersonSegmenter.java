package shinline.vision.pose;

import org.bytedeco.opencv.opencv_core.Mat;

/** The landmark model's variant that gives the person's outline; for frames worth it. */
public final class PersonSegmenter implements AutoCloseable {
  private final OnnxModel model;
  private final RegionCrop crop;

  private PersonSegmenter() {
    model = OnnxModel.load(ModelFile.OUTLINES, LandmarkModel.INPUT_SIDE, 1);
    crop = LandmarkModel.newCrop();
  }

  /** Loads the model; close the segmenter to free its memory. */
  public static PersonSegmenter open() {
    return new PersonSegmenter();
  }

  /** The mask of the person in a region, as a rule the one in which the pose was found. */
  public PersonMask mask(Mat bgrUpright, RegionOfInterest region) {
    return mask(cut(bgrUpright, region));
  }

  /** A region to be looked at later, if at all. */
  public PersonCut cut(Mat bgrUpright, RegionOfInterest region) {
    return new PersonCut(crop.pixels(bgrUpright, region), region);
  }

  /** The mask of the person in a region that was cut out earlier. */
  public PersonMask mask(PersonCut cut) {
    float[] input = crop.planes(cut.bgr(), ImageFlip.AS_FILMED);
    return new PersonMask(model.run(input).get(0), cut.region());
  }

  @Override
  public void close() {
    crop.close();
    model.close();
  }
}
