package shinline.cli.json;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.Arrays;
import java.util.Locale;

/**
 * Records as JSON: components in their order, constants of an enum as {@code lower-case-words}, an
 * empty {@code Optional} as null, decimals in plain figures. Read back, a part that is not there is
 * a fault and never null.
 */
public final class JsonRecords {
  private JsonRecords() {}

  /** For a format to add what is its own. */
  public static JsonMapper.Builder mapper() {
    return JsonMapper.builder()
        .addModule(new Jdk8Module())
        .annotationIntrospector(new WordsOfConstants())
        .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
        .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);
  }

  private static final class WordsOfConstants extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public String[] findEnumValues(
        MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
      return Arrays.stream(constants)
          .map(c -> c.name().toLowerCase(Locale.ROOT).replace('_', '-'))
          .toArray(String[]::new);
    }
  }
}
