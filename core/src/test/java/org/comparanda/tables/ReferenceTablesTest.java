package org.comparanda.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Outline;
import org.comparanda.measurement.PartRule;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.taxon.Growth;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceTablesTest {
  private static final ReferenceTables SHIPPED = ReferenceTables.shipped();
  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");
  private static final Pattern PATH = Pattern.compile("M[-0-9. MLCQZ]+");

  static Stream<Element> everyElement() {
    return SHIPPED.protocol().elements().stream();
  }

  static Stream<Measurement> everyMeasurement() {
    return SHIPPED.protocol().measurements().stream();
  }

  static Stream<PublishedEquation> everyEquation() {
    return SHIPPED.equations().stream();
  }

  @Test
  void theProtocolCoversTheSkeleton() {
    assertTrue(SHIPPED.protocol().elements().size() >= 60);
    assertTrue(SHIPPED.protocol().measurements().size() >= 20);
  }

  @ParameterizedTest
  @MethodSource("everyElement")
  void everyElementHasASourceAndAnOpenOrEmptyIdentifier(Element element) {
    assertFalse(element.source().isBlank());
    assertTrue(element.ontologyId().matches("(UBERON:[0-9]{7})?"), element.ontologyId());
    assertTrue(element.key().value().matches("[a-z0-9-]+"), element.key().value());
  }

  // Identifiers and numbers per skeleton: UBERON as read, Lyman 2008 table 6.4.
  @Test
  void elementsAgreeWithTheOpenOntologyAndTheHandbook() {
    assertEquals("UBERON:0000976", element("humerus").ontologyId());
    assertEquals("UBERON:0000981", element("femur").ontologyId());
    assertEquals("UBERON:0001450", element("calcaneus").ontologyId());
    assertEquals("UBERON:0001684", element("mandible").ontologyId());
    assertEquals(8, element("phalanx-1").perSkeleton().get("bovid_cervid"));
    assertEquals(20, element("phalanx-1").perSkeleton().get("canid"));
    assertEquals(36, element("rib").perSkeleton().get("equid"));
    assertEquals(10, element("tarsal").perSkeleton().get("suid"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"carapace", "plastron", "nuchal", "xiphiplastron", "suprapygal"})
  void anElementThatTheOntologyLacksHasNoInventedIdentifier(String key) {
    assertEquals("", element(key).ontologyId());
  }

  @ParameterizedTest
  @MethodSource("everyMeasurement")
  void everyMeasurementIsDefinedSourcedAndDrawn(Measurement m) {
    assertFalse(m.source().isBlank());
    assertTrue(m.definition().length() > 30, m.definition());
    assertFalse(m.mistakes().isEmpty());
    assertFalse(m.needs().isEmpty());
    assertTrue(m.plausible().isPresent());
    Outline outline = SHIPPED.outline(m.element()).orElseThrow();
    assertTrue(outline.viewOf(m.landmarks().orElseThrow()).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"humerus", "femur", "calcaneus", "mandible", "carapace"})
  void theFirstElementsHaveMeasurementsAndADrawing(String key) {
    assertTrue(SHIPPED.protocol().of(new ElementKey(key)).size() >= 2);
    assertTrue(SHIPPED.outline(new ElementKey(key)).isPresent());
  }

  @ParameterizedTest
  @MethodSource("everyElement")
  void everyElementIsDrawn(Element element) {
    assertTrue(SHIPPED.outline(element.key()).isPresent(), element.key().value());
  }

  @Test
  void everyDrawingIsPathDataInsideItsBox() {
    for (Outline outline : SHIPPED.outlines()) {
      assertFalse(outline.source().isBlank());
      for (Outline.View view : outline.views()) {
        assertTrue(view.edge().endsWith("Z"), view.caption());
        Stream.concat(Stream.of(view.edge()), view.lines().stream())
            .forEach(
                path -> {
                  assertTrue(PATH.matcher(path).matches(), path);
                  assertTrue(liesIn(view.box(), path), outline.element() + ": " + path);
                });
        assertTrue(view.bands().stream().allMatch(b -> liesIn(view.box(), b.box())));
      }
    }
  }

  // Handbook orderings: trochlea within the lower end (von den Driesch 1976), its waist within the
  // trochlea (Payne and Bull 1988), length from the head within the greatest length.
  @Test
  void partsAreNotLongerThanTheirWhole() {
    List<PartRule> rules = SHIPPED.protocol().partRules(new ElementKey("humerus"));
    assertTrue(rules.contains(rule("humerus", "BT", "Bd")));
    assertTrue(rules.contains(rule("humerus", "HTC", "BT")));
    assertTrue(rules.contains(rule("humerus", "GLC", "GL")));
  }

  @Test
  void everyTaxonHasASourceAndMixUpsHoldForWholeGroups() {
    for (Taxon taxon : SHIPPED.taxa().taxa()) {
      assertFalse(taxon.source().isBlank());
      boolean groupIsMixedUp =
          SHIPPED.taxa().lineage(taxon.name()).stream()
              .anyMatch(n -> SHIPPED.taxa().taxon(n).orElseThrow().humanMixUp());
      assertEquals(groupIsMixedUp, taxon.humanMixUp(), taxon.name().value());
    }
  }

  // Common teaching in forensic practice: bear feet, pig molars, turtle shell.
  @ParameterizedTest
  @ValueSource(strings = {"Ursidae", "Sus scrofa", "Testudo graeca"})
  void bearsPigsAndTurtlesAreOnTheMixUpList(String name) {
    assertTrue(SHIPPED.taxa().taxon(new TaxonName(name)).orElseThrow().humanMixUp());
  }

  @Test
  void mammalsStopGrowingAndCrocodiliansDoNot() {
    assertEquals(Growth.DETERMINATE, growth("Ovis aries"));
    assertEquals(Growth.INDETERMINATE, growth("Crocodylus palustris"));
    assertEquals(Growth.INDETERMINATE, growth("Testudo graeca"));
  }

  @Test
  void sheepAndGoatAreKnownLookAlikes() {
    assertEquals(
        Set.of(new TaxonName("Capra hircus")),
        SHIPPED.taxa().lookAlikesOf(new TaxonName("Ovis aries")));
    assertEquals(
        "Caprini",
        SHIPPED
            .taxa()
            .lowestCommon(List.of(new TaxonName("Ovis aries"), new TaxonName("Capra hircus")))
            .orElseThrow()
            .value());
  }

  @ParameterizedTest
  @MethodSource("everyEquation")
  void everyEquationIsCitedVerifiedAndGivesItsWorkedPoints(PublishedEquation equation) {
    assertFalse(equation.citation().isBlank());
    assertFalse(equation.howVerified().isBlank());
    assertTrue(equation.verified(), "rows from memory are not shipped");
    for (PublishedEquation.Worked point : equation.worked()) {
      assertFalse(point.source().isBlank());
      assertEquals(point.y(), equation.form().at(point.x()), point.within(), equation.key());
    }
  }

  // Both sides printed: Vörös 1980 (radius 130 mm, 522.6 mm), Vörös 1984 (metacarpal of an ox,
  // 197 mm, 1217 mm, printed to whole mm), Berendi 2010 (metatarsal 261.5 mm, 1393.8 mm).
  @Test
  void factorsGiveThePrintedHeights() {
    assertEquals(522.6, equation("sheep-withers-radius").form().at(130), 0.05);
    assertEquals(1217, equation("cattle-withers-metacarpal-ox").form().at(197), 0.5);
    assertEquals(1393.8, equation("horse-withers-metatarsal").form().at(261.5), 0.05);
  }

  private static boolean liesIn(Outline.Box box, String path) {
    List<Double> numbers =
        NUMBER.matcher(path).results().map(r -> Double.valueOf(r.group())).toList();
    return IntStream.range(0, numbers.size() / 2)
        .allMatch(i -> box.holds(numbers.get(2 * i), numbers.get(2 * i + 1)));
  }

  private static boolean liesIn(Outline.Box outer, Outline.Box inner) {
    return outer.holds(inner.x(), inner.y())
        && outer.holds(inner.x() + inner.width(), inner.y() + inner.height());
  }

  private static PartRule rule(String element, String part, String whole) {
    return new PartRule(
        new ElementKey(element), new MeasurementCode(part), new MeasurementCode(whole));
  }

  private static Element element(String key) {
    return SHIPPED.protocol().element(new ElementKey(key)).orElseThrow();
  }

  private static Growth growth(String name) {
    return SHIPPED.taxa().taxon(new TaxonName(name)).orElseThrow().growth();
  }

  private static PublishedEquation equation(String key) {
    return SHIPPED.equations().stream().filter(e -> e.key().equals(key)).findFirst().orElseThrow();
  }
}
