package shinline.cli.speed;

import static shinline.metrics.calibration.CalibrationKey.SAMPLING_EVERY;
import static shinline.metrics.calibration.CalibrationKey.SAMPLING_LOOKS;
import static shinline.metrics.calibration.CalibrationKey.SAMPLING_PACE;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.crossing.PeopleCrossing;
import shinline.metrics.calibration.Calibration;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipPart;
import shinline.vision.clip.Frame;
import shinline.vision.clip.FrameSampling;
import shinline.vision.clip.PicturePool;
import shinline.vision.observation.SparseLooks;
import shinline.vision.observation.SparseLooks.Taken;
import shinline.vision.observation.StandingCheck;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PersonDetector;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseModel;
import shinline.vision.pose.PoseTracker;

/**
 * The pose model at the frames a check has it look at, and nothing else at the same time.
 *
 * @param people what it saw
 * @param sampled frames it might have looked at
 * @param looks those it did
 * @param loadS seconds in which the models were loaded
 * @param coreS of the looks, on the thread that asks for them: all of it where that is the only one
 * @param wallS seconds the looks took
 */
record PoseAlone(
    PeopleCrossing people, int sampled, int looks, double loadS, double coreS, double wallS) {

  static FrameSampling sampling(PoseModel model) {
    return new FrameSampling(CalibrationFile.shipped(model).value(SAMPLING_LOOKS), ClipPart.WHOLE);
  }

  static PoseAlone look(Path file, PoseModel model) {
    Calibration calibration = CalibrationFile.shipped(model);
    double load = threadS();
    try (PersonDetector detector = PersonDetector.open();
        PoseEstimator pose = PoseTracker.open(model, detector);
        PicturePool pictures = new PicturePool();
        Clip clip = Reading.open(file, 1, sampling(model))) {
      double loadS = threadS() - load;
      SparseLooks sparse =
          new SparseLooks(
              pose,
              SparseLooks.apartS(
                  calibration.value(SAMPLING_EVERY), calibration.value(SAMPLING_LOOKS)),
              calibration.value(SAMPLING_PACE));
      PeopleCrossing people = new PeopleCrossing(clip.info().widthPx(), clip.info().heightPx());
      StandingCheck standing = new StandingCheck();
      int sampled = 0;
      int looks = 0;
      double coreS = 0;
      long wallNs = 0;
      boolean more = true;
      while (more) {
        Optional<Frame> next = clip.nextInto(pictures.take());
        more = next.isPresent();
        sampled += more ? 1 : 0;
        double core = threadS();
        long wall = System.nanoTime();
        List<Taken> seen = next.map(sparse::next).orElseGet(sparse::finish);
        wallNs += System.nanoTime() - wall;
        coreS += threadS() - core;
        for (Taken taken : seen) {
          if (taken.people().isPresent()) {
            looks++;
            PeopleInView there = taken.people().get();
            people.add(taken.frame().index(), taken.frame().timeS(), there);
            if (standing.look(there.ofMover()).isPresent()) {
              pose.pictureIsUpright();
            }
          }
          pictures.give(taken.frame().image());
        }
      }
      return new PoseAlone(people, sampled, looks, loadS, coreS, wallNs / 1e9);
    }
  }

  private static double threadS() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }
}
