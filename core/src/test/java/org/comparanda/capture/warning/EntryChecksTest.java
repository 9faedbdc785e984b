package org.comparanda.capture.warning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperInput;
import org.comparanda.capture.CaliperText;
import org.comparanda.capture.LineEnd;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PartRule;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.SideTolerance;
import org.comparanda.reference.Source;
import org.junit.jupiter.api.Test;

/** One sentence each. Invented shelf: Bd from 28 to 64 mm. Expected values by hand. */
class EntryChecksTest {
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final MeasurementCode BD = new MeasurementCode("Bd");
  private static final MeasurementCode BT = new MeasurementCode("BT");
  private static final MeasurementCode GL = new MeasurementCode("GL");

  private static Entry entry(String typed) {
    CaliperInput input = CaliperText.withoutCard().typed(typed);
    return new Entry(
        new Measurement(
            HUMERUS,
            BD,
            "invented",
            "",
            List.of(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            0.02,
            1,
            "invented"),
        input.fold(read -> read.values().get(0), refused -> null),
        new ShelfRanges(Map.of(BD, new Measurement.Range(28, 64))),
        Map.of(GL, 150.0, BT, 30.0),
        List.of(),
        List.of(GL, BT),
        List.of(new PartRule(HUMERUS, BD, GL), new PartRule(HUMERUS, BT, BD)),
        Optional.empty(),
        Optional.empty());
  }

  private static List<String> sentences(Entry entry) {
    return EntryChecks.warnings(entry).stream().map(Warning::sentence).toList();
  }

  private static List<Double> proposals(Entry entry) {
    return EntryChecks.warnings(entry).stream()
        .flatMap(warning -> warning.proposal().stream())
        .map(Length::mm)
        .toList();
  }

  @Test
  void ordinaryValueIsNotRemarkedOn() {
    assertEquals(List.of(), sentences(entry("40")));
    assertEquals(List.of(), sentences(entry("31")));
    assertEquals(List.of(), sentences(entry("64")));
  }

  @Test
  void valueOutsideTheShelfIsSaid() {
    assertEquals(
        List.of("70.5 mm is outside what any animal on the shelf shows for Bd (28 mm to 64 mm)."),
        sentences(entry("70.5")));
  }

  @Test
  void tenTimesTooLargeIsProposed() {
    assertEquals(
        "Ten times too large for the shelf: did you mean 40 mm?", sentences(entry("400")).get(0));
    assertEquals(List.of(40.0), proposals(entry("400")));
  }

  @Test
  void tenTimesTooSmallIsProposed() {
    assertEquals(
        "Ten times too small for the shelf: did you mean 40 mm?", sentences(entry("4")).get(0));
  }

  @Test
  void inchesAreProposed() {
    assertEquals(List.of(31.75), proposals(entry("1.25")));
    assertEquals("These look like inches: did you mean 31.75 mm?", sentences(entry("1.25")).get(0));
  }

  @Test
  void millimetresReadAsInchesAreProposed() {
    assertEquals(40.0, proposals(entry("40 in")).get(0), 1e-12); // 1016 mm / 25.4; two roundings
  }

  @Test
  void swappedDigitsAreProposed() {
    assertEquals(
        "Two digits may be swapped: did you mean 29.1 mm?", sentences(entry("92.1")).get(0));
  }

  @Test
  void valueOfTheNeighbouringFieldIsSaid() {
    assertEquals(
        List.of("This is the value of BT, the field beside this one."), sentences(entry("30")));
  }

  @Test
  void partLongerThanWholeIsSaidFromBothSides() {
    assertEquals(
        "Bd would be longer than GL, which holds it.",
        new PartLongerThanWhole().check(entry("151")).orElseThrow().sentence());
    assertEquals(
        "BT would be longer than Bd, which holds it.",
        new PartLongerThanWhole().check(entry("29")).orElseThrow().sentence());
  }

  @Test
  void takeBeyondToleranceIsSaidWithoutTellingTheHiddenOne() {
    Entry plain = entry("41");
    Entry second =
        new Entry(
            plain.measurement(),
            plain.value(),
            plain.shelf(),
            plain.others(),
            List.of(40.0),
            plain.neighbours(),
            plain.partRules(),
            plain.card(),
            plain.beside());
    assertEquals(
        List.of(
            "This take differs from an earlier one by more than the tolerance: look where the jaws"
                + " stand; if it is right, a third take follows."),
        sentences(second));
  }

  @Test
  void lengthBeyondTheJawsIsSaid() {
    CaliperCard shortOne =
        new CaliperCard(
            "caliper 4",
            "",
            LengthUnit.MILLIMETRE,
            '.',
            0,
            2,
            LineEnd.NONE,
            new Length(0.01),
            Optional.of(new Length(50)),
            Optional.empty());
    Entry plain = entry("60");
    Entry withCard =
        new Entry(
            plain.measurement(),
            plain.value(),
            plain.shelf(),
            plain.others(),
            plain.takesMm(),
            plain.neighbours(),
            plain.partRules(),
            Optional.of(shortOne),
            plain.beside());
    assertEquals(
        List.of("The caliper in hand opens to 50 mm; take a longer one or the measuring board."),
        sentences(withCard));
  }

  private static Entry beside(String typed, double otherMm) {
    Entry plain = entry(typed);
    return new Entry(
        plain.measurement(),
        plain.value(),
        plain.shelf(),
        plain.others(),
        plain.takesMm(),
        plain.neighbours(),
        plain.partRules(),
        plain.card(),
        Optional.of(new Entry.Beside(Side.LEFT, otherMm, SideTolerance.usual())));
  }

  /** The tolerance is a twentieth of the longer side: 40 x 0.05 = 2 mm. */
  @Test
  void valueFarFromTheOtherSidesIsSaidWithIt() {
    assertEquals(List.of(), sentences(beside("40", 38.0)));
    assertEquals(
        List.of(
            "The left side has 37.9 mm: left and right of one animal seldom differ by more than"
                + " 5 %. Are both of the same animal, and do the jaws stand alike?"),
        sentences(beside("40", 37.9)));
  }

  @Test
  void rangesLeaveOutBonesThatFeedNoFit() {
    Shelf shelf =
        new Shelf(
            List.of(
                animal("A-1", Set.of(), 30.0, Set.of()),
                animal("A-2", Set.of(), 40.0, Set.of()),
                animal("A-3", Set.of(Flag.CAST), 90.0, Set.of()),
                animal("A-4", Set.of(), 5.0, Set.of(Flag.CRUSHED))));
    assertEquals(
        Map.of(BD, new Measurement.Range(30, 40)), ShelfRanges.of(shelf, HUMERUS).ranges());
    assertEquals(Map.of(), ShelfRanges.of(shelf, new ElementKey("femur")).ranges());
  }

  private static Animal animal(String id, Set<Flag> flags, double bd, Set<Flag> boneFlags) {
    return new Animal(
        new AnimalId(id),
        Optional.empty(),
        Source.PUBLICATION,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        flags,
        "",
        List.of(new ShelfBone(HUMERUS, Side.LEFT, Portion.WHOLE, boneFlags, Map.of(BD, bd))));
  }
}
