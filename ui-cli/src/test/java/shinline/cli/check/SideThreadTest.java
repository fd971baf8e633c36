package shinline.cli.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class SideThreadTest {
  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void errandsAreDoneInTheirOrderBeforeItCloses() {
    List<Integer> done = Collections.synchronizedList(new ArrayList<>());
    CountDownLatch given = new CountDownLatch(1);
    try (SideThread side = new SideThread("test")) {
      for (int i = 0; i < 5; i++) {
        int number = i;
        side.begin(
            () -> {
              await(given);
              return done.add(number);
            });
      }
      assertThat(done).isEmpty();
      given.countDown();
    }
    assertThat(done).containsExactly(0, 1, 2, 3, 4);
  }

  @Test
  void whatWentWrongIsThrownWhereTheResultIsWanted() {
    try (SideThread side = new SideThread("test")) {
      SideThread.Errand<String> fault =
          side.begin(
              () -> {
                throw new IllegalArgumentException("fault");
              });
      SideThread.Errand<String> error =
          side.begin(
              () -> {
                throw new UnsatisfiedLinkError("error");
              });
      assertThatThrownBy(fault::result).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(error::result).isInstanceOf(UnsatisfiedLinkError.class);
      assertThat(side.begin(() -> "good").result()).isEqualTo("good");
      fault.ifGood(s -> assertThat(s).as("reached").isNull());
    }
  }

  @Test
  void noFrameIsWatchedBeforeTheOneBeforeIsDoneWith() {
    CountDownLatch firstSeen = new CountDownLatch(1);
    AtomicBoolean firstDone = new AtomicBoolean();
    try (WatchThread beside = new WatchThread()) {
      beside.watch(
          () -> {
            await(firstSeen);
            firstDone.set(true);
          });
      firstSeen.countDown();
      beside.watch(() -> {});
      assertThat(firstDone).isTrue();
    }
  }

  @Test
  void aWatcherThatFailsIsHeardOf() {
    try (WatchThread beside = new WatchThread()) {
      beside.watch(
          () -> {
            throw new IllegalStateException("watcher");
          });
      assertThatThrownBy(beside::finish).hasMessage("watcher");
    }
  }
}
