package org.ferryglide.examples.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;

/** The plan as JSON keeps to the schema that is published with it. */
class PlanJsonTest {
  private static final Path EXAMPLE = Path.of("scenarios/ollen-skerries");

  private static String json(Duration later) throws IOException {
    PassageFolder folder = PassageFolder.read(EXAMPLE);
    Instant departure = folder.start().toInstant().plus(later);
    return JsonText.of(
        PlanJson.of(folder.name(), departure, TimedPlan.of(folder.passage(), departure)));
  }

  private static List<Error> faults(String json) throws IOException {
    try (InputStream in = PlanJson.class.getResourceAsStream("plan.schema.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(text, InputFormat.JSON);
      return schema.validate(
          json,
          InputFormat.JSON,
          context -> context.executionConfig(it -> it.formatAssertionsEnabled(true)));
    }
  }

  @Test
  void aPlanKeepsToTheSchema() throws IOException {
    String json = json(Duration.ZERO);
    assertEquals(List.of(), faults(json));
    assertTrue(json.contains("\"possible\" : true"));
  }

  @Test
  void aPassageWithoutDataKeepsToTheSchema() throws IOException {
    String json = json(Duration.ofDays(365));
    assertEquals(List.of(), faults(json));
    assertTrue(json.contains("\"wantOfData\" : true"), json);
  }

  @Test
  void theSchemaRefusesWhatIsNoPlan() throws IOException {
    String json = json(Duration.ZERO);
    assertFalse(faults(json.replace("\"legs\"", "\"stages\"")).isEmpty());
    assertFalse(faults(json.replace("\"WITHIN\"", "\"FINE\"")).isEmpty());
    assertFalse(faults(json.replace("2026-06-14T10:40:00Z", "yesterday")).isEmpty());
    assertFalse(faults("{}").isEmpty());
  }

  @Test
  void whatJsonCannotHoldIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> JsonText.of(Map.of("figure", Double.NaN)));
    assertThrows(
        IllegalArgumentException.class,
        () -> JsonText.of(Map.of("figure", Double.POSITIVE_INFINITY)));
    assertThrows(IllegalArgumentException.class, () -> JsonText.of(Map.of("time", Instant.EPOCH)));
  }
}
