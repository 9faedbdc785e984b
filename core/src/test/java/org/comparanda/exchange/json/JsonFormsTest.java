package org.comparanda.exchange.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.suggestion.Answer;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.DrawerEntry;
import org.comparanda.suggestion.NearestAnimal;
import org.comparanda.suggestion.NextMeasurement;
import org.comparanda.suggestion.SetAside;
import org.comparanda.suggestion.SizeFreeFit;
import org.comparanda.suggestion.StrangerTrial;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.suggestion.Thresholds;
import org.comparanda.suggestion.Trial;
import org.comparanda.suggestion.TrialRow;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/** The forms of docs/formats.md. All values are invented. */
class JsonFormsTest {
  private static final ProgramVersion PROGRAM = new ProgramVersion("Comparanda", "0.0.0");
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final MeasurementCode BD = new MeasurementCode("Bd");
  private static final MeasurementCode BT = new MeasurementCode("BT");
  private static final TaxonName SHEEP = new TaxonName("Ovis aries");
  private static final TaxonName GOAT = new TaxonName("Capra hircus");

  @Test
  void suggestionsHaveTheDocumentedForm() throws IOException {
    StringWriter text = new StringWriter();
    ShelfInUse shelf = new ShelfInUse(47, 2, List.of("BT", "Bd"), "equal", "auto");
    try (SuggestionJson json =
        new SuggestionJson(text, PROGRAM, shelf, ComparisonRules.withDefaults())) {
      json.write(suggestion());
    }
    GoldenFile.equal("suggest.json", text.toString());
  }

  private static Suggestion suggestion() {
    return new Suggestion(
        "K-1",
        HUMERUS,
        List.of(BD, BT),
        Answer.FITS_A_FEW,
        "Fits a few: Ovis aries or Capra hircus.",
        "Left humerus, 2 measurements, 47 animals.",
        List.of("BT speaks for Ovis aries rather than Capra hircus."),
        List.of(
            new TaxonFit(SHEEP, 0.625, 0.5, 1.25, 40), new TaxonFit(GOAT, 0.375, 0.0625, 3.5, 7)),
        List.of(new SizeFreeFit(SHEEP, 0.25, 0.75, 0.5)),
        List.of(),
        List.of(SHEEP, GOAT),
        List.of(SHEEP),
        "exact",
        Optional.empty(),
        List.of(
            new DrawerEntry(
                new TaxonName("Bos taurus"), "Bd is too small.", DrawerEntry.Standing.RULED_OUT)),
        List.of(
            new NearestAnimal(new AnimalId("HB-1"), SHEEP, Optional.of("A 1"), 0.75),
            new NearestAnimal(new AnimalId("X-9"), GOAT, Optional.empty(), Double.NaN)),
        List.of(new NextMeasurement(new MeasurementCode("HTC"), 0.125, "HTC tells most of them.")),
        List.of("One reading drives this answer."),
        new Suggestion.Basis(
            47,
            2,
            "equal",
            "predictive",
            new Suggestion.Missing(
                Suggestion.Missing.Way.FILLED, "complete", 7, Optional.of(0.03125)),
            Optional.empty(),
            List.of(new SetAside(new TaxonName("Bubalus bubalis"), "none in this county")),
            Thresholds.withDefaults(),
            "v1"));
  }

  @Test
  void trialsHaveTheDocumentedForm() throws IOException {
    StringWriter text = new StringWriter();
    new TrialJson(PROGRAM).write(text, trial());
    GoldenFile.equal("trial.json", text.toString());
  }

  @Test
  void trialsWithStrangersHaveTheDocumentedForm() throws IOException {
    StringWriter text = new StringWriter();
    StrangerTrial.Stranger sheep = new StrangerTrial.Stranger(SHEEP, 2, 0, 1, 2);
    new TrialJson(PROGRAM)
        .write(
            text,
            new StrangerTrial(trial(), new StrangerTrial.Known(2, 1, 0), sheep, List.of(sheep)));
    GoldenFile.equal("trial-stranger.json", text.toString());
  }

  private static Trial trial() {
    return new Trial(
        HUMERUS,
        List.of(BD),
        "linear",
        "equal",
        2,
        new Proportion(1, 2),
        List.of(new Trial.TaxonRate(SHEEP, new Proportion(1, 2), new Proportion(1, 1))),
        Map.of(SHEEP, Map.of(SHEEP, 1, GOAT, 1)),
        List.of(
            new TrialRow(
                new AnimalId("HB-1"),
                Side.LEFT,
                SHEEP,
                List.of(BD),
                Optional.of(SHEEP),
                Outcome.of(0.75),
                Outcome.of(0.5),
                Answer.FITS_A_FEW),
            new TrialRow(
                new AnimalId("HB-2"),
                Side.RIGHT,
                SHEEP,
                List.of(BD),
                Optional.empty(),
                Outcome.none("Too few animals.", "Add some."),
                Outcome.none("Too few animals.", "Add some."),
                Answer.SHELF_TOO_THIN)),
        new Proportion(1, 2),
        Outcome.of(-0.25),
        Outcome.none("No share.", "Add animals."),
        Outcome.of(new Trial.ListQuality(new Proportion(2, 2), 1.5)),
        List.of(new Trial.ShareBand(0.7, 0.8, 0.75, new Proportion(1, 1))));
  }

  @Test
  void sizeLinesHaveTheDocumentedFields() throws IOException {
    GoldenFile.equal("size-fields.txt", String.join("\n", fields(size(List.of("Bd")))) + "\n");
  }

  @Test
  void severalPredictorsMakeArrays() throws IOException {
    JsonNode line = size(List.of("Bd", "BT")).get("line");
    for (String field : List.of("slope", "slopeStandardError", "slopeInterval95", "xRange")) {
      assertEquals(2, line.get(field).size(), field);
    }
  }

  private static JsonNode size(List<String> from) throws IOException {
    List<Animal> animals = new ArrayList<>();
    double[] bd = {30, 31, 33, 34, 36, 38, 41};
    double[] bt = {28, 28.5, 31, 30.5, 34, 33, 37};
    for (int i = 0; i < bd.length; i++) {
      animals.add(animal("A" + i, 2 * bd[i] + (i % 2), bd[i], bt[i]));
    }
    SizeQuestion once = SizeQuestion.of("body_length", "Bd");
    SizeQuestion question =
        new SizeQuestion("body_length", from, once.taxa(), once.line(), once.scale(), once.level());
    Outcome<FittedLine> line =
        SizeDesk.of(new Shelf(animals), new Protocol(List.of(), List.of(), List.of()))
            .line(question);
    StringWriter text = new StringWriter();
    try (SizeJson json = new SizeJson(text, PROGRAM, SizeReport.of(line))) {
      json.write("K-1", line.then(l -> l.estimate(Map.of("Bd", 35.0, "BT", 31.0))), List.of());
      json.write("K-2", line.then(l -> l.estimate(Map.of("Bd", 60.0, "BT", 50.0))), List.of());
      json.write("K-3", Outcome.none("Nothing measured.", "Measure Bd."), List.of());
    }
    assertFalse(text.toString().contains("NaN"), text.toString());
    return new ObjectMapper().readTree(text.toString());
  }

  private static Animal animal(String id, double length, double bd, double bt) {
    return new Animal(
        new AnimalId(id),
        Optional.of(SHEEP),
        Source.ANOTHER_HOUSE,
        Optional.empty(),
        "",
        "",
        "",
        Optional.of(length),
        Optional.empty(),
        Set.of(),
        "",
        List.of(
            new ShelfBone(HUMERUS, Side.LEFT, Portion.WHOLE, Set.of(), Map.of(BD, bd, BT, bt))));
  }

  /** Every path of the tree with the kind of value that stands there. */
  private static Set<String> fields(JsonNode node) {
    Set<String> paths = new TreeSet<>();
    collect("", node, paths);
    return paths;
  }

  private static void collect(String path, JsonNode node, Set<String> paths) {
    if (node.isObject()) {
      node.properties().forEach(f -> collect(path + "." + f.getKey(), f.getValue(), paths));
    } else if (node.isArray()) {
      paths.add(path + "[]");
      node.forEach(child -> collect(path + "[]", child, paths));
    } else {
      paths.add(path + ": " + node.getNodeType().name().toLowerCase(java.util.Locale.ROOT));
    }
  }
}
