package shinline.cli.outcome;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.result.SetResult;
import shinline.metrics.target.Target;
import shinline.metrics.track.RawTrack;
import shinline.vision.clip.ClipPart;
import shinline.vision.observation.KeptPictures;
import shinline.vision.scene.CameraPath;

/** What came of one clip. */
public sealed interface ClipReport {

  /**
   * @param set measured in the still view of {@code camera}; so are the points of its series
   * @param warnings about the clip itself, plain words, most important first
   * @param camera leads from the still view to the pixels of a frame
   * @param footage what the set was measured from, to measure it again in another way
   * @param kept parts of the frames that were looked at, where pictures are wanted
   */
  record Measured(
      ClipFacts clip,
      SetResult set,
      List<String> warnings,
      CameraPath camera,
      Optional<Footage> footage,
      Optional<KeptPictures> kept)
      implements ClipReport {
    public Measured {
      warnings = List.copyOf(warnings);
    }

    /** Of a camera that stood still. */
    public Measured(ClipFacts clip, SetResult set, List<String> warnings) {
      this(clip, set, warnings, CameraPath.still(), Optional.empty(), Optional.empty());
    }
  }

  /**
   * What a set is measured from.
   *
   * @param track what the pose model saw, in the still view of the camera
   * @param part the part of the clip that was looked at
   */
  record Footage(RawTrack track, SetRequest request, ClipPart part, ClipObservations seen) {}

  /** The clip was read, but no set could be measured in it. */
  record NotMeasured(ClipFacts clip, Target target, SetRefusal why, List<String> warnings)
      implements ClipReport {
    public NotMeasured {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * The clip could not be read at all.
   *
   * @param reason what is wrong
   * @param advice what to do about it
   */
  record Unreadable(String fileName, String reason, String advice) implements ClipReport {}

  default <T> T fold(
      Function<Measured, T> measured,
      Function<NotMeasured, T> notMeasured,
      Function<Unreadable, T> unreadable) {
    if (this instanceof Measured m) {
      return measured.apply(m);
    }
    return this instanceof NotMeasured n
        ? notMeasured.apply(n)
        : unreadable.apply((Unreadable) this);
  }

  default ExitCode exitCode() {
    return fold(m -> ExitCode.MEASURED, n -> ExitCode.NOT_MEASURED, u -> ExitCode.UNREADABLE);
  }
}
