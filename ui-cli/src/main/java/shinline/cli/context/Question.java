package shinline.cli.context;

import java.io.Console;
import java.util.Optional;

/** Asks the person at the terminal. */
@FunctionalInterface
public interface Question {

  /** The answer as typed; empty when nobody is there to answer. */
  Optional<String> ask(String question);

  /** Asks at the terminal this process has, if it has one. */
  static Question atTerminal() {
    return question -> {
      Console console = System.console();
      return console == null
          ? Optional.empty()
          : Optional.ofNullable(console.readLine("%s ", question));
    };
  }
}
