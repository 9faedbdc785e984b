package org.comparanda.exchange.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Answer;
import org.comparanda.suggestion.AnswerFigures;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.taxon.TaxonName;

/**
 * A whole answer as text: program, rules, readings, the suggestion in its documented form, and the
 * animals it rests on. Written twice from the same things it is the same text, digit by digit.
 */
public final class KeptAnswerText {
  private final String text;
  private final JsonNode json;

  private KeptAnswerText(String text, JsonNode json) {
    this.text = text;
    this.json = json;
  }

  /** The text of an answer. */
  public static KeptAnswerText of(
      ProgramVersion program,
      ComparisonRules rules,
      BoneInHand bone,
      Suggestion suggestion,
      Map<AnimalId, String> animals) {
    StringWriter text = new StringWriter();
    try (JsonText out = new JsonText(text)) {
      out.object().text("program", program.program()).text("version", program.version());
      RulesJson.write(out.name("rules"), rules);
      inHand(out.name("readings"), bone);
      OneSuggestionJson.write(out.name("answer"), suggestion);
      out.object("animals");
      for (Map.Entry<AnimalId, String> animal : animals.entrySet()) {
        out.text(animal.getKey().value(), animal.getValue());
      }
      out.endObject().endObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return read(text.toString())
        .fold(
            kept -> kept,
            none -> {
              throw new IllegalStateException(none.reason());
            });
  }

  /** A text that {@link #of} wrote; or why it is none. */
  public static Outcome<KeptAnswerText> read(String text) {
    try {
      JsonNode json = new ObjectMapper().readTree(text);
      return json.path("answer").has("answer") && json.has("rules") && json.has("readings")
          ? Outcome.of(new KeptAnswerText(text, json))
          : Outcome.none("The text holds no answer.", "It was not kept by this program.");
    } catch (JsonProcessingException unreadable) {
      return Outcome.none("The text is no JSON.", "It was not kept by this program.");
    }
  }

  private static void inHand(JsonText out, BoneInHand bone) throws IOException {
    out.object()
        .text("bone", bone.id())
        .optionalText("animal", bone.animal())
        .text("element", bone.element())
        .text("side", bone.side().name())
        .text("portion", bone.portion().name())
        .text("proximal", bone.state().proximal().name())
        .text("distal", bone.state().distal().name())
        .names("flags", bone.state().flags().stream().sorted().map(Flag::name).toList())
        .object("values");
    for (Map.Entry<MeasurementCode, Double> value : bone.values().entrySet()) {
      out.number(value.getKey().value(), value.getValue());
    }
    out.endObject().endObject();
  }

  /** Which program said it. */
  public ProgramVersion program() {
    return new ProgramVersion(json.path("program").asText(), json.path("version").asText());
  }

  /** The rules it was said by. */
  public ComparisonRules rules() {
    return RulesJson.read(json.path("rules"));
  }

  /** The bone with its readings, to be asked again. */
  public BoneInHand bone() {
    JsonNode read = json.path("readings");
    Map<MeasurementCode, Double> values = new TreeMap<>();
    read.path("values")
        .properties()
        .forEach(e -> values.put(new MeasurementCode(e.getKey()), e.getValue().doubleValue()));
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    read.path("flags").forEach(f -> flags.add(Flag.valueOf(f.asText())));
    return new BoneInHand(
        read.path("bone").asText(),
        Optional.of(read.path("animal"))
            .filter(JsonNode::isTextual)
            .map(a -> new AnimalId(a.asText())),
        new ElementKey(read.path("element").asText()),
        Side.valueOf(read.path("side").asText()),
        Portion.valueOf(read.path("portion").asText()),
        new BoneState(
            Fusion.valueOf(read.path("proximal").asText()),
            Fusion.valueOf(read.path("distal").asText()),
            flags),
        values);
  }

  /** What of it is compared. */
  public AnswerFigures figures() {
    JsonNode answer = json.path("answer");
    List<TaxonFit> taxa = new ArrayList<>();
    answer
        .path("taxa")
        .forEach(
            fit ->
                taxa.add(
                    new TaxonFit(
                        new TaxonName(fit.path("taxon").asText()),
                        fit.path("share").doubleValue(),
                        fit.path("typicality").doubleValue(),
                        fit.path("distanceSquared").doubleValue(),
                        fit.path("animals").intValue())));
    List<TaxonName> listed = new ArrayList<>();
    answer.path("calibratedList").forEach(t -> listed.add(new TaxonName(t.asText())));
    Map<AnimalId, String> animals = new TreeMap<>();
    json.path("animals")
        .properties()
        .forEach(e -> animals.put(new AnimalId(e.getKey()), e.getValue().asText()));
    JsonNode basis = answer.path("basis");
    return new AnswerFigures(
        Answer.valueOf(answer.path("answer").asText()),
        answer.path("sentence").asText(),
        taxa,
        listed,
        basis.path("method").asText(),
        Suggestion.Missing.Way.valueOf(basis.path("missing").asText()),
        basis.path("shelfVersion").asText(),
        animals);
  }

  /**
   * What differs in a later answer on the same readings, in plain sentences; none where not a digit
   * does, the version of the program apart.
   */
  public List<String> changesTo(KeptAnswerText now) {
    List<String> changes = new ArrayList<>(figures().changesTo(now.figures()));
    if (changes.isEmpty()) {
      List<String> parts = new ArrayList<>();
      JsonNode later = now.json.path("answer");
      json.path("answer")
          .fieldNames()
          .forEachRemaining(
              part -> {
                if (!json.path("answer").path(part).equals(later.path(part))) {
                  parts.add(part);
                }
              });
      if (!parts.isEmpty()) {
        changes.add(
            "Every share, typicality and distance is the same; these parts differ: "
                + String.join(", ", parts)
                + ".");
      }
    }
    return changes;
  }

  /** The text itself. */
  @Override
  public String toString() {
    return text;
  }
}
