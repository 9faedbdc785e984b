package org.comparanda.exchange.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Counting;
import org.comparanda.suggestion.Method;
import org.comparanda.suggestion.Priors;
import org.comparanda.suggestion.Scale;
import org.comparanda.suggestion.SetAside;
import org.comparanda.suggestion.Thresholds;
import org.comparanda.taxon.TaxonName;

/** The rules that bones were compared by, all of them, so that they can be compared so again. */
final class RulesJson {
  private RulesJson() {}

  static void write(JsonText json, ComparisonRules rules) throws IOException {
    json.object()
        .text("scale", rules.scale())
        .text("method", rules.method())
        .text("age", rules.age())
        .text("counting", rules.counting())
        .text("language", rules.language().toLanguageTag())
        .object("priors")
        .text("kind", rules.priors().kind())
        .text("source", rules.priors().source())
        .object("weights");
    for (Map.Entry<TaxonName, Double> weight : rules.priors().weights().entrySet()) {
      json.number(weight.getKey().value(), weight.getValue());
    }
    json.endObject().endObject().array("setAside");
    for (SetAside aside : rules.setAside()) {
      json.object().text("taxon", aside.taxon()).text("reason", aside.reason()).endObject();
    }
    json.endArray().object("houseChoices");
    for (Map.Entry<ElementKey, Method> choice : rules.houseChoices().entrySet()) {
      json.text(choice.getKey().value(), choice.getValue());
    }
    json.endObject();
    thresholds(json, rules.thresholds());
    json.endObject();
  }

  static void thresholds(JsonText json, Thresholds limits) throws IOException {
    json.object("thresholds")
        .number("nothingFits", limits.nothingFits())
        .number("poorFit", limits.poorFit())
        .number("oneShare", limits.oneShare())
        .number("candidateShare", limits.candidateShare())
        .number("weakShare", limits.weakShare())
        .number("gateLowerLimit", limits.gateLowerLimit())
        .count("mostNamed", limits.mostNamed())
        .count("degreesNeeded", limits.degreesNeeded())
        .count("ruleOutAnimals", limits.ruleOutAnimals())
        .number("calibratedMiss", limits.calibratedMiss())
        .endObject();
  }

  /** The rules as {@link #write} wrote them. */
  static ComparisonRules read(JsonNode rules) {
    Map<ElementKey, Method> choices = new TreeMap<>();
    rules
        .path("houseChoices")
        .properties()
        .forEach(
            e -> choices.put(new ElementKey(e.getKey()), Method.valueOf(e.getValue().asText())));
    return ComparisonRules.withDefaults()
        .withScale(Scale.valueOf(rules.path("scale").asText()))
        .withMethod(Method.valueOf(rules.path("method").asText()))
        .withAge(BoneAge.valueOf(rules.path("age").asText()))
        .withCounting(Counting.valueOf(rules.path("counting").asText()))
        .withLanguage(Locale.forLanguageTag(rules.path("language").asText("en")))
        .withPriors(priors(rules.path("priors")))
        .withSetAside(setAside(rules.path("setAside")))
        .withHouseChoices(choices)
        .withThresholds(thresholds(rules.path("thresholds")));
  }

  private static Priors priors(JsonNode priors) {
    Map<TaxonName, Double> weights = new TreeMap<>();
    priors
        .path("weights")
        .properties()
        .forEach(e -> weights.put(new TaxonName(e.getKey()), e.getValue().doubleValue()));
    return new Priors(
        Priors.Kind.valueOf(priors.path("kind").asText()), weights, priors.path("source").asText());
  }

  private static List<SetAside> setAside(JsonNode list) {
    List<SetAside> all = new ArrayList<>();
    list.forEach(
        e ->
            all.add(
                new SetAside(new TaxonName(e.path("taxon").asText()), e.path("reason").asText())));
    return all;
  }

  private static Thresholds thresholds(JsonNode limits) {
    return new Thresholds(
        limits.path("nothingFits").doubleValue(),
        limits.path("poorFit").doubleValue(),
        limits.path("oneShare").doubleValue(),
        limits.path("candidateShare").doubleValue(),
        limits.path("weakShare").doubleValue(),
        limits.path("gateLowerLimit").doubleValue(),
        limits.path("mostNamed").intValue(),
        limits.path("degreesNeeded").intValue(),
        limits.path("ruleOutAnimals").intValue(),
        limits.path("calibratedMiss").doubleValue());
  }
}
