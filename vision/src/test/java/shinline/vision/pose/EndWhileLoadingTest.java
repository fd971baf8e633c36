package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.io.TempDir;

/** A coach may call a run off at any moment, also while a model is being loaded. */
class EndWhileLoadingTest {
  private static final int CALLED_OFF = 3;

  @TempDir Path folder;

  @RepeatedTest(4)
  void endsWithoutACrash() throws IOException, InterruptedException {
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Loading.class.getName())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(process.waitFor()).isEqualTo(CALLED_OFF);
    assertThat(said).isEmptyFile();
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).as("Java's own report of a crash").containsExactly(said);
    }
  }

  /** Ends the process as soon as the runtime is at work on the largest model. */
  static final class Loading {
    private Loading() {}

    public static void main(String[] args) throws InterruptedException {
      Thread loading =
          new Thread(
              () -> OnnxModel.load(PoseModel.HEAVY.landmarksFile(), LandmarkModel.INPUT_SIDE, 1));
      loading.setDaemon(true);
      loading.start();
      while (loading.isAlive()) {
        if (isInside(loading, "createSession")) {
          System.exit(CALLED_OFF);
        }
        Thread.sleep(1);
      }
    }

    private static boolean isInside(Thread thread, String method) {
      StackTraceElement[] calls = thread.getStackTrace();
      return Arrays.stream(calls).limit(1).anyMatch(call -> call.getMethodName().equals(method));
    }
  }
}
