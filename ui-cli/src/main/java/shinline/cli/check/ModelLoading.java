package shinline.cli.check;

import shinline.vision.pose.PoseModel;

/** Loads the models of a clip while it is opened; both take about as long. */
final class ModelLoading implements AutoCloseable {
  private final SideThread.Errand<Models> errand;

  private ModelLoading(SideThread.Errand<Models> errand) {
    this.errand = errand;
  }

  static ModelLoading begin(SideThread side, PoseModel size) {
    return new ModelLoading(side.begin(() -> Models.load(size)));
  }

  /** The models, which stay this object's to close; throws what went wrong with them. */
  Models models() {
    return errand.result();
  }

  /** Frees the models, if they could be loaded at all; complaints are for {@link #models()}. */
  @Override
  public void close() {
    errand.ifGood(Models::close);
  }
}
