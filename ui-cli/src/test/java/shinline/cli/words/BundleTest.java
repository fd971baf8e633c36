package shinline.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The bundle against the sources that read it: no key too few, none too many. */
class BundleTest {
  /** Keys that picocli looks up; a test of the commands holds them against the options. */
  private static final List<String> OF_PICOCLI =
      List.of("shinline.", "usage.", "mixinStandardHelpOptions.");

  /** What a page of the docs says of each fault; FaultCatalogueTest holds it against the page. */
  private static final Pattern OF_DOCS =
      Pattern.compile("flag-kind\\..*\\.(when|blind-spots)|fault-unit\\..*");

  private static WordsUses sources;

  @BeforeAll
  static void read() {
    sources = WordsUses.in(MainSources.typed());
  }

  @Test
  void everyUsedKeyHasWordsThatTakeItsArguments() {
    List<String> wrong = new ArrayList<>();
    for (WordsUses.Use use : sources.uses()) {
      if (!Words.bundle().containsKey(use.key())) {
        wrong.add(use.where() + ": no words for " + use.key());
        continue;
      }
      Phrase phrase = Phrase.parse(use.key(), Words.bundle().getString(use.key()));
      boolean fits =
          use.fit() == WordsUses.Fit.EXACT
              ? phrase.places() == use.arguments() && phrase.usesAll()
              : phrase.places() <= use.arguments();
      if (!fits) {
        wrong.add(
            use.where()
                + ": "
                + use.key()
                + " takes "
                + phrase.places()
                + ", given "
                + use.arguments());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(sources.uses()).hasSizeGreaterThan(300);
  }

  @Test
  void everyKeyIsUsed() {
    Set<String> used = new TreeSet<>(sources.literals());
    sources.uses().forEach(use -> used.add(use.key()));
    assertThat(keys())
        .filteredOn(key -> OF_PICOCLI.stream().noneMatch(key::startsWith))
        .filteredOn(key -> !OF_DOCS.matcher(key).matches())
        .filteredOn(key -> sources.open().stream().noneMatch(key::startsWith))
        .allMatch(used::contains);
  }

  @Test
  void everyTextCanBeRead() {
    assertThat(keys())
        .filteredOn(key -> OF_PICOCLI.stream().noneMatch(key::startsWith))
        .allSatisfy(key -> Phrase.parse(key, Words.bundle().getString(key)));
  }

  private static Set<String> keys() {
    return new TreeSet<>(Words.bundle().keySet());
  }
}
