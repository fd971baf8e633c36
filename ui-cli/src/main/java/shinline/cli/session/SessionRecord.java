package shinline.cli.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.record.AthleteName;
import shinline.cli.record.MeasuredSet;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
import shinline.cli.record.SetLine;
import shinline.cli.team.SetOutcome.OnRecord;
import shinline.cli.words.Words;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetEntry;
import shinline.metrics.training.SetSource;

/**
 * Puts sets into the record, each once. A clip goes by its digest. A set judged by eye goes by
 * everything the row says: as many equal ones are on record as there are equal rows.
 */
final class SessionRecord {
  private final RecordStore store;
  private final Map<Alike, Integer> rows = new HashMap<>();

  /** Sets that nothing but their number tells apart. */
  private record Alike(String athlete, SetEntry entry) {}

  SessionRecord(RecordStore store) {
    this.store = store;
  }

  /**
   * What became of a set.
   *
   * @param note what the coach should know
   */
  record Kept(OnRecord state, Optional<String> note) {}

  Kept measured(ReadySet set, SetEntry entry, MeasuredSet measured) {
    return store
        .append(line(set, entry, SetSource.CLIP, measured))
        .fold(
            added -> new Kept(OnRecord.ADDED, Optional.empty()),
            there ->
                new Kept(
                    OnRecord.THERE_BEFORE, difference(set.planned().athlete(), there.id(), entry)));
  }

  Kept byEye(ReadySet set, SetEntry entry) {
    AthleteName athlete = set.planned().athlete();
    int nth = rows.merge(new Alike(athlete.key(), entry), 1, Integer::sum);
    List<RecordedSet> known = new RecordView(store.read()).of(athlete).history().sets();
    if (known.stream().filter(s -> s.entry().equals(entry)).count() >= nth) {
      return new Kept(OnRecord.THERE_BEFORE, Optional.empty());
    }
    Optional<String> other = sameLabel(set, entry);
    if (other.isPresent()) {
      return new Kept(
          OnRecord.THERE_BEFORE, Optional.of(Words.say("session.label-there", other.get())));
    }
    store.append(line(set, entry, SetSource.BY_HAND, MeasuredSet.nothing()));
    return new Kept(OnRecord.ADDED, Optional.empty());
  }

  /** The line of a set of the same day, leg, step and label, judged by eye with other numbers. */
  private Optional<String> sameLabel(ReadySet set, SetEntry entry) {
    Optional<String> label = set.planned().work().label();
    return new RecordView(store.read())
        .linesOf(set.planned().athlete()).stream()
            .filter(l -> label.isPresent() && has(l, "set", label.get()))
            .filter(l -> has(l, "source", SetSource.BY_HAND.word()))
            .filter(l -> has(l, "date", entry.date().toString()))
            .filter(l -> has(l, "leg", entry.leg().name().toLowerCase(java.util.Locale.ROOT)))
            .filter(l -> has(l, "step", entry.step()))
            .map(RecordLine::id)
            .findFirst();
  }

  private static boolean has(RecordLine line, String field, String value) {
    return line.json().path(field).asText("").equals(value);
  }

  /** What a row says of pain or load that the record does not. */
  private Optional<String> difference(AthleteName athlete, String id, SetEntry entry) {
    return new RecordView(store.read())
        .of(athlete).history().sets().stream()
            .filter(s -> s.id().equals(id))
            .map(RecordedSet::entry)
            .filter(e -> e.pain() != entry.pain() || !e.load().equals(entry.load()))
            .map(e -> Words.say("session.differs", id))
            .findFirst();
  }

  private static SetLine line(
      ReadySet set, SetEntry entry, SetSource source, MeasuredSet measured) {
    return new SetLine(
        set.planned().athlete(),
        entry,
        set.planned().work().label(),
        set.planned().seen().note(),
        source,
        measured);
  }
}
