package org.ferryglide.examples.files;

import java.io.StringWriter;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Named values as JSON text.
 *
 * <pre>{@code
 * JsonText.of(Map.of("distanceMetres", 1852.0)); // { "distanceMetres" : 1852.0 }
 * }</pre>
 */
public final class JsonText {
  private JsonText() {}

  /** A line for each value, with line feeds on every machine. */
  private static final class Pretty extends ObjectWriteContext.Base {
    @Override
    public PrettyPrinter getPrettyPrinter() {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      return new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }
  }

  /**
   * Writes the values, each on a line of its own.
   *
   * @param values text, numbers, booleans, null, lists and maps of the same, by name
   * @return the JSON text, ended by a line feed
   * @throws IllegalArgumentException if a number is NaN or infinite, which JSON cannot hold, or a
   *     value is of another type
   */
  public static String of(Map<String, ?> values) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(new Pretty(), text)) {
      write(json, values);
    }
    return text.append('\n').toString();
  }

  private static void write(JsonGenerator json, @Nullable Object value) {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeName((String) entry.getKey());
        write(json, entry.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof Iterable<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(json, item);
      }
      json.writeEndArray();
    } else if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof Integer || value instanceof Long) {
      json.writeNumber(((Number) value).longValue());
    } else if (value instanceof Double number) {
      json.writeNumber(finite(number));
    } else if (value instanceof Boolean yes) {
      json.writeBoolean(yes);
    } else if (value == null) {
      json.writeNull();
    } else {
      throw new IllegalArgumentException("JSON holds no " + value.getClass().getName());
    }
  }

  private static double finite(double number) {
    if (Double.isNaN(number) || Double.isInfinite(number)) {
      throw new IllegalArgumentException("a number in JSON must be finite, but was " + number);
    }
    return number;
  }
}
