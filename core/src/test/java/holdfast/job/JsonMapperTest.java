// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import holdfast.installation.PlanSummary;
import holdfast.quantity.InputException;
import java.util.List;
import java.util.Map;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** What a maintenance system does with jobs, summaries and errors: a JSON mapper of general use takes and gives them. */
class JsonMapperTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Stream<MountingPlan> jobs() {
    return Stream.concat(ExampleJobs.all().values().stream(), Stream.of(8, 17, 25).map(QuestionJobs::question));
  }

  /** The file of a job as a tree of texts, as any YAML reader gives it. */
  private static ObjectNode tree(MountingPlan job) {
    Load load = new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build());
    return MAPPER.valueToTree(load.loadFromString(JobFile.text(job)));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aJobGoesThroughJsonAsTextAndAsObject(MountingPlan job) throws JsonProcessingException {
    String record = MAPPER.writeValueAsString(Map.of("order", 4711, "job", JobFile.text(job)));
    assertEquals(job, JobFile.parse(MAPPER.readTree(record).get("job").textValue()));
    assertEquals(job, JobFile.parse(MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(tree(job))));
    assertEquals(job, JobFile.parse(MAPPER.writeValueAsString(tree(job))));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aSummaryIsTheSameFromItsJson(MountingPlan job) throws JsonProcessingException {
    PlanSummary summary = job.summary();
    assertEquals(summary, MAPPER.readValue(summary.json(), PlanSummary.class));
    assertEquals(MAPPER.readTree(summary.json()), MAPPER.valueToTree(summary));
    assertEquals(summary, MAPPER.readValue(MAPPER.writeValueAsString(summary), PlanSummary.class));
  }

  @Test
  void errorsAreListsOfPlacesAndReasons() throws JsonProcessingException {
    String text = JobFile.text(ExampleJobs.metricLever()).replace("torque: 75 N·m", "torqe: 75 N·m").replace("2.1 kN", "2,1 kN");
    List<Fault> faults = assertThrows(JobFileException.class, () -> JobFile.parse(text)).faults();
    JsonNode json = MAPPER.readTree(MAPPER.writeValueAsString(faults));
    assertEquals(3, json.size());
    for (String name : List.of("line", "column", "key", "found", "accepted", "reason")) {
      assertTrue(json.get(0).has(name), name);
    }
    assertEquals(faults, List.of(MAPPER.readValue(json.toString(), Fault[].class)));
    InputException refused = assertThrows(InputException.class, () -> holdfast.quantity.Force.parse("2,1 kN"));
    JsonNode one = MAPPER.valueToTree(Map.of("parameter", refused.parameter(), "value", refused.value(), "permitted",
        refused.permitted(), "reason", refused.reason()));
    assertEquals("'2,1 kN'", one.get("value").textValue());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void jobsKeepTheJsonSchema(MountingPlan job) throws JsonProcessingException {
    JsonNode schema = MAPPER.readTree(JobFile.jsonSchema());
    ObjectNode file = tree(job);
    assertEquals(1, matches(schema, file));
    ((ObjectNode) file.get("duty")).put("dutty", "x");
    assertEquals(0, matches(schema, file));
    ((ObjectNode) file.get("duty")).remove(List.of("dutty", "life"));
    assertEquals(0, matches(schema, file));
    ObjectNode listed = tree(job);
    listed.remove("stud");
    listed.put("roller-list", "rollers.yaml").set("roller", MAPPER.valueToTree(Map.of("name", "A")));
    assertEquals(1, matches(schema, listed));
    assertFalse(schema.get("oneOf").isEmpty());
  }

  private static long matches(JsonNode schema, JsonNode value) {
    return stream(schema.get("oneOf")).filter(one -> keeps(one, value)).count();
  }

  private static Stream<JsonNode> stream(JsonNode array) {
    return StreamSupport.stream(Spliterators.spliteratorUnknownSize(array.elements(), 0), false);
  }

  /** The part of JSON Schema that the program writes; a word that is not among it fails. */
  private static boolean keeps(JsonNode schema, JsonNode value) {
    for (Map.Entry<String, JsonNode> rule : schema.properties()) {
      JsonNode says = rule.getValue();
      boolean kept = switch (rule.getKey()) {
        case "type" -> says.isArray() ? stream(says).anyMatch(type -> is(type, value)) : is(says, value);
        case "const" -> says.equals(value);
        case "enum" -> stream(says).anyMatch(value::equals);
        case "required" -> stream(says).allMatch(name -> value.has(name.textValue()));
        case "properties" -> value.properties().stream()
            .allMatch(entry -> says.has(entry.getKey()) && keeps(says.get(entry.getKey()), entry.getValue()));
        case "items" -> stream(value).allMatch(item -> keeps(says, item));
        case "minItems" -> value.size() >= says.intValue();
        case "additionalProperties", "description", "examples" -> true;
        default -> throw new IllegalStateException("not known: " + rule.getKey());
      };
      if (!kept) {
        return false;
      }
    }
    return true;
  }

  private static boolean is(JsonNode type, JsonNode value) {
    return switch (type.textValue()) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isTextual();
      case "number" -> value.isNumber();
      default -> throw new IllegalStateException("not known: " + type);
    };
  }
}
