package shinline.cli.accuracy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;
import shinline.metrics.track.BodyPoint;

/** Reads NAME.truth.json; the format is described beside the sample clips. */
final class TruthReader {
  private static final String HIP = "hipHeightCm";

  private final Path file;

  private TruthReader(Path file) {
    this.file = file;
  }

  /**
   * @throws CoachException naming the file and the field, when it is no truth file
   */
  static Truth read(Path file) {
    return new TruthReader(file).read();
  }

  private Truth read() {
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(Files.readString(file));
    } catch (JsonProcessingException e) {
      throw bad(Words.say("truth.no-json"));
    } catch (IOException e) {
      throw bad(Words.say("truth.closed"));
    }
    JsonNode series = field(root, "series");
    double[] timeS = numbers(series, "timeS");
    for (int i = 1; i < timeS.length; i++) {
      if (!(timeS[i] > timeS[i - 1])) {
        throw bad(Words.say("truth.times", i));
      }
    }
    Map<String, double[]> columns = new LinkedHashMap<>();
    for (Iterator<String> names = series.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      double[] column = numbers(series, name);
      if (column.length != timeS.length) {
        throw bad(Words.say("truth.length", name));
      }
      columns.put(name, column);
    }
    if (!columns.containsKey(HIP)) {
      throw bad(Words.say("truth.missing", "series." + HIP));
    }
    List<Truth.Scripted> reps = new ArrayList<>();
    for (JsonNode rep : field(root, "reps")) {
      Set<String> faults = new LinkedHashSet<>();
      rep.path("faults").forEach(f -> faults.add(f.asText()));
      reps.add(new Truth.Scripted(number(rep, "startS"), number(rep, "endS"), Set.copyOf(faults)));
    }
    JsonNode camera = root.path("camera");
    return new Truth(
        field(root, "clip").asText(),
        number(root, "fps"),
        field(root, "facing").asText().equals("left"),
        field(root, "frontLeg").asText().equals("left"),
        field(root, "frontLegNearCamera").asBoolean(),
        field(root, "rearFoot").asText().equals("bench"),
        root.path("athlete")
            .asText(String.format(Locale.ROOT, "%.3f m", number(root, "athleteHeightM"))),
        number(root, "athleteHeightM"),
        Math.abs(camera.path("yawDeg").asDouble(0)),
        camera.path("pitchDeg").isNumber()
            ? OptionalDouble.of(camera.path("pitchDeg").asDouble())
            : OptionalDouble.empty(),
        camera.path("shake").asDouble(0) != 0,
        List.copyOf(reps),
        timeS,
        Map.copyOf(columns),
        pixels(root.path("pixels"), timeS.length));
  }

  private Map<BodyPoint, Truth.Pixels> pixels(JsonNode told, int frames) {
    Map<BodyPoint, Truth.Pixels> pixels = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      JsonNode places = told.path(point.name().toLowerCase(Locale.ROOT));
      if (places.isMissingNode()) {
        continue;
      }
      if (places.size() != frames) {
        throw bad(Words.say("truth.pixels", point));
      }
      double[] x = new double[frames];
      double[] y = new double[frames];
      for (int i = 0; i < frames; i++) {
        x[i] = places.path(i).path(0).asDouble(Double.NaN);
        y[i] = places.path(i).path(1).asDouble(Double.NaN);
      }
      pixels.put(point, new Truth.Pixels(x, y));
    }
    return Map.copyOf(pixels);
  }

  private JsonNode field(JsonNode of, String name) {
    JsonNode node = of.path(name);
    if (node.isMissingNode() || node.isNull()) {
      throw bad(Words.say("truth.missing", name));
    }
    return node;
  }

  private double number(JsonNode of, String name) {
    JsonNode node = field(of, name);
    if (!node.isNumber()) {
      throw bad(Words.say("truth.no-number", name));
    }
    return node.asDouble();
  }

  private double[] numbers(JsonNode of, String name) {
    JsonNode node = field(of, name);
    double[] values = new double[node.size()];
    for (int i = 0; i < values.length; i++) {
      // A value that is not known in a frame is null there.
      values[i] = node.path(i).isNumber() ? node.path(i).asDouble() : Double.NaN;
    }
    return values;
  }

  private CoachException bad(String why) {
    return new CoachException(ExitCode.UNREADABLE, Words.say("truth.bad", file.getFileName(), why));
  }
}
