package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Main;

/** The command where there is no network, and watched for every socket it would open. */
class NothingLeavesTest {
  private static final String ATTEMPT = "a socket was asked for";

  @TempDir Path folder;

  private int run(List<String> command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said").toFile())
        .start()
        .waitFor();
  }

  private List<String> check() throws IOException {
    // The models look at each frame of it.
    Films.still(folder.resolve("still.mp4"), Films.athlete(), 30, Films.Index.LAST);
    return BadInputTest.command("still.mp4", "--out", "results");
  }

  /** A name space of the network's own has not even a way to the computer itself. */
  @Test
  void withoutAnyNetwork() throws Exception {
    try {
      assumeTrue(run(List.of("unshare", "-n", "true")) == 0, "no network may be taken away here");
    } catch (IOException e) {
      assumeTrue(false, "no network can be taken away here");
    }
    List<String> command = new ArrayList<>(List.of("unshare", "-n"));
    command.addAll(check());
    assertThat(run(command)).isEqualTo(4);
    assertThat(folder.resolve("results/still.json")).content().contains("\"no-rep\"");
  }

  @Test
  void noSocketIsAskedFor() throws Exception {
    List<String> command = check();
    command.set(command.indexOf(Main.class.getName()), Watched.class.getName());
    assertThat(run(command)).isEqualTo(4);
    assertThat(folder.resolve("said")).content().doesNotContain(ATTEMPT);
  }

  /** The watch itself is worth something. */
  @Test
  void aSocketWouldBeNoticed() throws Exception {
    List<String> command = BadInputTest.command();
    command.set(command.indexOf(Main.class.getName()), Watched.class.getName());
    command.set(command.size() - 1, Watched.TRY);
    run(command);
    assertThat(Files.readString(folder.resolve("said"))).contains(ATTEMPT);
  }

  /** The command in a Java that tells of each socket. */
  static final class Watched {
    static final String TRY = "try-a-socket";

    private Watched() {}

    @SuppressWarnings("deprecation") // The one way to hear of every socket without an agent.
    public static void main(String[] words) throws IOException {
      Socket.setSocketImplFactory(
          () -> {
            System.out.println(ATTEMPT);
            throw new IllegalStateException(ATTEMPT);
          });
      if (words[0].equals(TRY)) {
        new Socket("127.0.0.1", 9).close();
      }
      Main.main(words);
    }
  }
}
