package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.ferryglide.examples.files.PlanJson;

/** The schemas that are published in the jar, one for the JSON answer of each verb. */
final class AnswerSchemas {
  private static final Map<String, Schema> BY_VERB = new ConcurrentHashMap<>();

  private AnswerSchemas() {}

  /** Fails unless the text keeps to the schema of the verb's answers. */
  static void keeps(String verb, String json) {
    Schema schema = BY_VERB.computeIfAbsent(verb, AnswerSchemas::read);
    assertEquals(
        List.of(),
        schema.validate(
            json,
            InputFormat.JSON,
            context -> context.executionConfig(it -> it.formatAssertionsEnabled(true))),
        json);
  }

  static Schema read(String verb) {
    try (InputStream in =
        verb.equals("passage")
            ? PlanJson.class.getResourceAsStream("plan.schema.json")
            : Ferryglide.class.getResourceAsStream(verb + ".schema.json")) {
      String text =
          new String(Objects.requireNonNull(in, verb).readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(text, InputFormat.JSON);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
