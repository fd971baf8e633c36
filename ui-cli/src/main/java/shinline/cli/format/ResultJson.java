package shinline.cli.format;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shinline.cli.file.FlagImages;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Cautions;
import shinline.cli.text.Headline;
import shinline.cli.text.JudgementWords;
import shinline.cli.text.RefusalWords;
import shinline.cli.text.SetUpWords;
import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.fault.Sight;
import shinline.metrics.judgement.Asked;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.track.Side;
import shinline.metrics.track.ToldLegs;
import shinline.vision.clip.ClipPart;

/**
 * Writes {@code shinline-result/1}, the contract of docs/result-format.md. Keys come in a fixed
 * order and numbers with fixed rounding; there is no date and no path in it, so the same clip gives
 * the same bytes.
 */
public final class ResultJson {
  /** Name and version of the format. */
  public static final String SCHEMA = "shinline-result/1";

  private static final int PLACES = 3;

  /** A pixel is a few millimetres: three places would round its length by a part in a thousand. */
  private static final int SCALE_PLACES = 5;

  private final JsonGenerator out;
  private final FlagImages images;

  private ResultJson(JsonGenerator out, FlagImages images) {
    this.out = out;
    this.images = images;
  }

  /** A result without pictures beside it. */
  public static void write(ClipReport.Measured report, Writer writer) throws IOException {
    write(report, FlagImages.none(), writer);
  }

  /**
   * @param images the pictures that lie beside the file
   */
  public static void write(ClipReport.Measured report, FlagImages images, Writer writer)
      throws IOException {
    try (JsonGenerator out = generator(writer)) {
      ResultJson json = new ResultJson(out, images);
      SetResult set = report.set();
      out.writeStartObject();
      json.head(report.clip());
      json.setUp(report, set.setUp());
      json.target(set.target());
      out.writeArrayFieldStart("reps");
      for (RepResult rep : set.reps()) {
        json.rep(rep);
      }
      out.writeEndArray();
      json.set(set);
      json.cautions();
      out.writeEndObject();
    }
  }

  public static void write(ClipReport.NotMeasured report, Writer writer) throws IOException {
    try (JsonGenerator out = generator(writer)) {
      ResultJson json = new ResultJson(out, FlagImages.none());
      out.writeStartObject();
      json.head(report.clip());
      json.unknownSetUp(report.clip(), report.warnings());
      json.target(report.target());
      out.writeArrayFieldStart("reps");
      out.writeEndArray();
      json.emptySet(report.target(), report.why());
      json.why(report.why());
      json.cautions();
      out.writeEndObject();
    }
  }

  private static JsonGenerator generator(Writer writer) throws IOException {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter("\n");
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    JsonGenerator out =
        JsonFactory.builder()
            .enable(com.fasterxml.jackson.core.StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build()
            .createGenerator(writer);
    out.setPrettyPrinter(printer);
    return out;
  }

  private void head(ClipFacts clip) throws IOException {
    out.writeStringField("schema", SCHEMA);
    out.writeObjectFieldStart("clip");
    out.writeStringField("file", clip.fileName());
    out.writeStringField("sha256", clip.sha256());
    out.writeNumberField("widthPx", clip.widthPx());
    out.writeNumberField("heightPx", clip.heightPx());
    out.writeNumberField("rotationDeg", clip.rotationDeg());
    out.writeNumberField("frames", clip.frames());
    number("durationS", clip.durationS());
    number("medianFps", clip.medianFps());
    out.writeBooleanField("variableFrameRate", clip.variableFrameRate());
    out.writeEndObject();
  }

  private void setUp(ClipReport.Measured report, SetUp setUp) throws IOException {
    ClipFacts clip = report.clip();
    List<String> clipWarnings = report.warnings();
    out.writeObjectFieldStart("setup");
    word("facing", setUp.facing());
    word("frontLeg", setUp.frontLeg());
    out.writeBooleanField("frontLegNearCamera", setUp.frontLegNearCamera());
    word("rearFoot", setUp.rearFoot());
    SetUp.Camera camera = setUp.camera();
    number("rollDeg", camera.rollDeg());
    word("rollSource", camera.rollSource());
    number("pitchDeg", camera.pitchDeg());
    word("pitchSource", camera.pitchSource());
    optional("yawDeg", camera.yawDeg(), PLACES);
    optional("scaleCmPerPx", setUp.cmPerPx(), SCALE_PLACES);
    word("scaleSource", setUp.scaleSource());
    if (setUp.cameraHold() != SetUp.CameraHold.STILL) {
      word("cameraMotion", setUp.cameraHold());
    }
    overrides(report.footage());
    out.writeStringField("poseModel", clip.poseModel());
    strings("warnings", SetUpWords.warnings(setUp, clipWarnings));
    out.writeEndObject();
  }

  /** What the coach told and the clip was not asked for. */
  private void overrides(Optional<ClipReport.Footage> footage) throws IOException {
    ToldLegs told = footage.map(f -> f.request().overrides().legs()).orElse(ToldLegs.NOTHING);
    ClipPart part = footage.map(ClipReport.Footage::part).orElse(ClipPart.WHOLE);
    out.writeObjectFieldStart("overrides");
    side("frontLeg", told.frontLeg());
    side("facing", told.facing());
    optional("fromS", part.fromS() > 0 ? Optional.of(part.fromS()) : Optional.empty(), PLACES);
    optional(
        "toS", Double.isInfinite(part.toS()) ? Optional.empty() : Optional.of(part.toS()), PLACES);
    out.writeEndObject();
  }

  private void side(String name, Optional<Side> side) throws IOException {
    if (side.isPresent()) {
      word(name, side.get());
    } else {
      out.writeNullField(name);
    }
  }

  private void unknownSetUp(ClipFacts clip, List<String> warnings) throws IOException {
    out.writeObjectFieldStart("setup");
    for (String key :
        List.of(
            "facing",
            "frontLeg",
            "frontLegNearCamera",
            "rearFoot",
            "rollDeg",
            "rollSource",
            "pitchDeg",
            "pitchSource",
            "yawDeg",
            "scaleCmPerPx",
            "scaleSource")) {
      out.writeNullField(key);
    }
    out.writeStringField("poseModel", clip.poseModel());
    strings("warnings", warnings);
    out.writeEndObject();
  }

  private void target(Target target) throws IOException {
    out.writeObjectFieldStart("target");
    if (target.shin().isPresent()) {
      ShinTarget shin = target.shin().get();
      out.writeStringField("shin", shin.name());
      out.writeObjectFieldStart("shinBand");
      out.writeStringField(
          "measure", shin.fold(a -> Measure.SHIN, d -> Measure.KNEE_PAST_TOE).jsonName());
      limit("min", shin.fold(ShinTarget.AngleBand::minDeg, ShinTarget.KneePastToeBand::minCm));
      limit("max", shin.fold(ShinTarget.AngleBand::maxDeg, ShinTarget.KneePastToeBand::maxCm));
      out.writeEndObject();
    } else {
      out.writeNullField("shin");
      out.writeNullField("shinBand");
    }
    DepthTarget depth = target.depth();
    out.writeStringField("depth", depth.name());
    out.writeObjectFieldStart("depthLimits");
    optional("maxThighDeg", depth.maxThighDeg(), PLACES);
    optional("maxRearKneeCm", depth.maxRearKneeCm(), PLACES);
    optional("minHipTravelCm", depth.minHipTravelCm(), PLACES);
    out.writeBooleanField("shortRange", depth.shortRangeAsked());
    out.writeEndObject();
    out.writeObjectFieldStart("tempo");
    phase("loweringS", target.tempo().lowering());
    phase("holdS", target.tempo().hold());
    phase("driveS", target.tempo().drive());
    phase("topS", target.tempo().top());
    out.writeEndObject();
    if (target.trunk().isPresent()) {
      out.writeObjectFieldStart("trunkLeanDeg");
      limit("min", target.trunk().get().minDeg());
      limit("max", target.trunk().get().maxDeg());
      out.writeEndObject();
    } else {
      out.writeNullField("trunkLeanDeg");
    }
    out.writeObjectFieldStart("margin");
    number("deg", target.margin().deg());
    number("cm", target.margin().cm());
    number("s", target.margin().s());
    out.writeEndObject();
    out.writeEndObject();
  }

  private void phase(String key, Optional<TempoTarget.Phase> phase) throws IOException {
    if (phase.isEmpty()) {
      out.writeNullField(key);
      return;
    }
    out.writeObjectFieldStart(key);
    limit("min", phase.get().minS());
    limit("max", phase.get().maxS());
    out.writeEndObject();
  }

  private void rep(RepResult rep) throws IOException {
    out.writeStartObject();
    out.writeNumberField("rep", rep.rep());
    number("startS", rep.startS());
    number("bottomStartS", rep.bottomStartS());
    number("bottomS", rep.bottomS());
    number("bottomEndS", rep.bottomEndS());
    number("endS", rep.endS());
    out.writeBooleanField("shortRange", rep.shortRange());
    Map<String, String> missing = new LinkedHashMap<>();
    out.writeObjectFieldStart("tempo");
    reading("loweringS", rep.tempo().lowering(), missing);
    reading("holdS", rep.tempo().hold(), missing);
    reading("driveS", rep.tempo().drive(), missing);
    reading("topS", rep.tempo().top(), missing);
    out.writeEndObject();
    out.writeObjectFieldStart("atBottom");
    for (Measure measure : Measure.values()) {
      reading(measure.jsonName(), rep.at(measure), missing);
    }
    out.writeEndObject();
    out.writeObjectFieldStart("drive");
    reading("meanSpeedMps", rep.drive().meanSpeed(), missing);
    reading("peakSpeedMps", rep.drive().peakSpeed(), missing);
    out.writeEndObject();
    if (rep.drive().bar().isPresent()) {
      bar(rep.drive().bar().get(), missing);
    } else {
      out.writeNullField("bar");
    }
    out.writeObjectFieldStart("notMeasured");
    for (Map.Entry<String, String> entry : missing.entrySet()) {
      out.writeStringField(entry.getKey(), entry.getValue());
    }
    out.writeEndObject();
    if (rep.verdict().isPresent()) {
      word("verdict", rep.verdict().get());
    } else {
      out.writeNullField("verdict");
    }
    strings("reasons", JudgementWords.reasons(rep));
    out.writeArrayFieldStart("flags");
    for (Flag flag : rep.flags()) {
      flag(rep.rep(), flag);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  /** Its gaps carry the name of the object: the drive's speeds are called the same. */
  private void bar(BarReading bar, Map<String, String> missing) throws IOException {
    Map<String, String> own = new LinkedHashMap<>();
    out.writeObjectFieldStart("bar");
    reading("meanSpeedMps", bar.meanSpeed(), own);
    reading("peakSpeedMps", bar.peakSpeed(), own);
    reading("strayCm", bar.strayCm(), own);
    reading("speedLossPct", bar.speedLossPct(), own);
    reading("trunkChangeDeg", bar.trunkChangeDeg(), own);
    out.writeEndObject();
    own.forEach((key, why) -> missing.put("bar." + key, why));
  }

  private void flag(int rep, Flag flag) throws IOException {
    out.writeStartObject();
    out.writeStringField("kind", flag.kind().jsonName());
    number("atS", flag.atS());
    out.writeNumberField("frame", flag.frame());
    number("value", flag.value());
    number("limit", flag.limit());
    out.writeStringField("unit", flag.unit().symbol());
    number("confidence", flag.confidence());
    Optional<String> image = images.fileName(rep, flag.kind());
    if (image.isPresent()) {
      out.writeStringField("image", image.get());
    } else {
      out.writeNullField("image");
    }
    out.writeEndObject();
  }

  private void set(SetResult set) throws IOException {
    out.writeObjectFieldStart("set");
    out.writeNumberField("reps", set.reps().size());
    if (set.hits().isPresent()) {
      out.writeNumberField("hits", set.hits().get());
    } else {
      out.writeNullField("hits");
    }
    out.writeObjectFieldStart("trend");
    for (Measure measure : Measure.values()) {
      Double slope = set.trend().get(measure);
      if (slope != null) {
        number(measure.jsonName(), slope);
      }
    }
    out.writeEndObject();
    if (set.fading().isPresent()) {
      out.writeObjectFieldStart("fading");
      out.writeNumberField("rep", set.fading().get().rep());
      out.writeStringField("what", set.fading().get().kind().jsonName());
      out.writeEndObject();
    } else {
      out.writeNullField("fading");
    }
    notSeen(set.unseen());
    out.writeStringField("summary", Headline.of(set));
    out.writeArrayFieldStart("notCounted");
    for (NotCounted not : set.notCounted()) {
      out.writeStartObject();
      number("fromS", not.fromS());
      number("toS", not.toS());
      out.writeStringField("reason", Words.of(not.reason(), "not-counted"));
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void notSeen(Map<Sight, List<Integer>> unseen) throws IOException {
    out.writeArrayFieldStart("notSeen");
    for (Map.Entry<Sight, List<Integer>> entry : unseen.entrySet()) {
      out.writeStartObject();
      out.writeStringField("what", entry.getKey().jsonName());
      out.writeArrayFieldStart("reps");
      for (int rep : entry.getValue()) {
        out.writeNumber(rep);
      }
      out.writeEndArray();
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void emptySet(Target target, SetRefusal why) throws IOException {
    out.writeObjectFieldStart("set");
    out.writeNumberField("reps", 0);
    if (Asked.of(target).isEmpty()) {
      out.writeNullField("hits");
    } else {
      out.writeNumberField("hits", 0);
    }
    out.writeObjectFieldStart("trend");
    out.writeEndObject();
    out.writeNullField("fading");
    notSeen(Map.of());
    out.writeStringField("summary", Words.say("json.not-measured", RefusalWords.reason(why)));
    out.writeArrayFieldStart("notCounted");
    out.writeEndArray();
    out.writeEndObject();
  }

  /** What no camera at the side can see, and what to take care of: a result may travel alone. */
  private void cautions() throws IOException {
    strings("cautions", Cautions.all());
  }

  private void why(SetRefusal why) throws IOException {
    out.writeObjectFieldStart("notMeasured");
    word("kind", why.kind());
    out.writeStringField("reason", RefusalWords.reason(why));
    out.writeStringField("advice", RefusalWords.advice(why));
    out.writeEndObject();
  }

  private void reading(String key, Reading reading, Map<String, String> missing)
      throws IOException {
    if (reading instanceof Reading.Measured measured) {
      out.writeObjectFieldStart(key);
      number("value", measured.value());
      number("plusMinus", measured.plusMinus());
      number("plusMinusWithin", measured.plusMinusWithin());
      out.writeEndObject();
    } else {
      out.writeNullField(key);
      missing.put(key, reading.fold(m -> "", gap -> Words.of(gap.gap(), "reason")));
    }
  }

  /** An open end of a band is infinite inside and null outside: JSON has no infinity. */
  private void limit(String key, double value) throws IOException {
    if (Double.isInfinite(value)) {
      out.writeNullField(key);
    } else {
      number(key, value);
    }
  }

  private void optional(String key, Optional<Double> value, int places) throws IOException {
    if (value.isPresent()) {
      out.writeNumberField(key, Decimals.round(value.get(), places));
    } else {
      out.writeNullField(key);
    }
  }

  private void number(String key, double value) throws IOException {
    out.writeNumberField(key, Decimals.round(value, PLACES));
  }

  private void word(String key, Enum<?> kind) throws IOException {
    out.writeStringField(key, kind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private void strings(String key, List<String> texts) throws IOException {
    out.writeArrayFieldStart(key);
    for (String text : texts) {
      out.writeString(text);
    }
    out.writeEndArray();
  }
}
