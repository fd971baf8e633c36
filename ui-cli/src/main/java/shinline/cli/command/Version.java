package shinline.cli.command;

import picocli.CommandLine.IVersionProvider;
import shinline.cli.words.Words;

/** The version in the jar's manifest. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {
      "shinline " + (version == null ? Words.say("command.no-version") : version)
    };
  }
}
