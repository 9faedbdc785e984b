package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BodyMeasure;
import org.comparanda.register.Restriction;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Export and import give an equal collection. */
class ShelfRoundTripTest {
  private static final List<Measurement> MEASUREMENTS =
      ReferenceTables.shipped().protocol().measurements();
  private static final String[] TEXTS = {
    "",
    "",
    "old",
    "=1+1",
    "+49",
    "-x",
    "@home",
    "'=quoted",
    "a;b,c",
    "two\nlines",
    "\"said\"",
    "Köln – Süd",
    "'",
    "12,5",
    "0007",
    "restricted by nobody's word, but so written"
  };

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"wide,csv", "long,csv", "wide,xlsx", "long,xlsx"})
  void theDemosShelfComesBackAsItWas(String shape, String kind) {
    Path from = Room.harrowmere(folder);
    Path back = opened(from, shape, kind);
    assertSame(cards(from), cards(back), shape);
  }

  @ParameterizedTest
  @CsvSource({
    "20417,wide,csv",
    "20417,long,csv",
    "7,wide,csv",
    "7,long,xlsx",
    "1959,wide,xlsx",
    "1959,long,csv",
    "3,wide,xlsx",
    "3,long,xlsx"
  })
  void anyShelfComesBackToTheLastDigit(long seed, String shape, String kind) {
    Path from = folder.resolve("from.comparanda");
    List<AnimalCard> made = cards(new SplittableRandom(seed));
    try (Collection room = Collection.create(from, Typed.CLOCK)) {
      room.tableIntake().bringIn("", "made", made, Progress.toTheEnd());
      room.people().save(new Person(new PersonId("keeper"), "The Keeper"));
    }
    assertSame(cards(from), cards(opened(from, shape, kind)), "seed " + seed);
  }

  /** By a person who may open what is restricted. */
  private Path opened(Path from, String shape, String kind) {
    for (String right : List.of("keeper", "open_restricted")) {
      assertEquals(
          0,
          Typed.command("rights", "give", "keeper", right, "--by", "keeper", "--collection", from)
              .code());
    }
    return there(from, shape, kind, "--restricted-opened-by", "keeper");
  }

  @Test
  void whatIsRestrictedStaysInTheHouse() {
    Path from = folder.resolve("from.comparanda");
    List<AnimalCard> made = cards(new SplittableRandom(3));
    long restricted =
        made.stream()
            .filter(
                c ->
                    c.restriction().export() == Restriction.Export.FORBIDDEN
                        || c.animal().remarks().contains("restricted"))
            .count();
    try (Collection room = Collection.create(from, Typed.CLOCK)) {
      room.tableIntake().bringIn("", "made", made, Progress.toTheEnd());
    }
    Path out = folder.resolve("out.csv");
    Typed done = Typed.command("export", "shelf", out, "--collection", from);
    Typed nobody =
        Typed.command("export", "shelf", out, "--collection", from, "--restricted-opened-by", "x");
    assertAll(
        () -> assertTrue(restricted > 0),
        () ->
            assertTrue(
                done.out().contains("held back: " + restricted + " restricted animal"),
                done.out() + done.err()),
        () -> assertEquals(2, nobody.code()),
        () -> assertTrue(nobody.err().contains("has not the right open_restricted")));
  }

  @Test
  void whatATableCannotHoldIsSaid() {
    Path from = folder.resolve("from.comparanda");
    try (Collection room = Collection.create(from, Typed.CLOCK)) {
      Animal animal = animal("A", "Ovis aries", "NA", List.of());
      room.tableIntake().bringIn("", "made", List.of(AnimalCard.of(animal)), Progress.toTheEnd());
    }
    Typed done = Typed.command("export", "shelf", folder.resolve("o.csv"), "--collection", from);
    assertAll(
        () -> assertEquals(1, done.code()),
        () -> assertTrue(done.err().contains("A table can't hold remarks of A"), done.err()));
  }

  private Path there(Path from, String shape, String kind, String... more) {
    Path table = folder.resolve("shelf." + kind);
    Path back = folder.resolve("back.comparanda");
    List<Object> words =
        new ArrayList<>(List.of("export", "shelf", table, "--collection", from, "--shape", shape));
    words.addAll(List.of(more));
    Typed out = Typed.command(words.toArray());
    assertEquals(0, out.code(), out.err());
    Typed in = Typed.command("shelf", "add", table, "--collection", back, "--register", "--as-is");
    assertEquals(0, in.code(), in.err());
    return back;
  }

  private static void assertSame(List<AnimalCard> out, List<AnimalCard> back, String where) {
    assertEquals(out.size(), back.size(), where);
    for (int i = 0; i < out.size(); i++) {
      assertEquals(out.get(i), back.get(i), where);
    }
  }

  private static List<AnimalCard> cards(Path collection) {
    try (Collection room = Collection.open(collection, Typed.CLOCK)) {
      return room.register().all();
    }
  }

  private static List<AnimalCard> cards(SplittableRandom random) {
    List<AnimalCard> cards = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      List<ShelfBone> bones = new ArrayList<>();
      for (int b = random.nextInt(4); b > 0; b--) {
        bones.add(bone(random));
      }
      Animal animal =
          animal("K=" + i, random.nextBoolean() ? "Ovis aries" : "Novum genus", text(random), bones)
              .withSex(text(random))
              .withAgeClass(text(random))
              .withOrigin(random.nextBoolean() ? "wild" : "")
              .withFlags(flags(random))
              .withSource(any(Source.values(), random))
              .withDrawer(Optional.of(text(random)).filter(t -> !t.isEmpty()))
              .withBodyLengthMm(number(random))
              .withBodyMassG(number(random));
      cards.add(
          new AnimalCard(
              animal,
              text(random),
              measured(random),
              measured(random),
              new Restriction(
                  text(random),
                  text(random),
                  any(Restriction.Export.values(), random),
                  random.nextBoolean()
                      ? Optional.empty()
                      : Optional.of(LocalDate.of(2027, 1, 1 + random.nextInt(28)))),
              org.comparanda.register.Standing.kept()));
    }
    return cards;
  }

  private static BodyMeasure measured(SplittableRandom random) {
    return new BodyMeasure(
        random.nextBoolean() ? Optional.empty() : Optional.of(LocalDate.of(2019, 5, 3)),
        text(random),
        any(BodyMeasure.Kind.values(), random));
  }

  private static Animal animal(String id, String taxon, String remarks, List<ShelfBone> bones) {
    return new Animal(
        new AnimalId(id),
        Optional.of(new TaxonName(taxon)),
        Source.ANOTHER_HOUSE,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        remarks,
        bones);
  }

  private static ShelfBone bone(SplittableRandom random) {
    Measurement first = MEASUREMENTS.get(random.nextInt(MEASUREMENTS.size()));
    Map<MeasurementCode, Double> values = new TreeMap<>();
    MEASUREMENTS.stream()
        .filter(m -> m.element().equals(first.element()) && random.nextInt(3) > 0)
        .forEach(m -> values.put(m.code(), Math.exp(12 * random.nextDouble() - 6)));
    if (random.nextInt(5) == 0) {
      values.put(new MeasurementCode("Own width"), random.nextDouble());
    }
    return new ShelfBone(
        first.element(),
        any(Side.values(), random),
        any(Portion.values(), random),
        flags(random),
        values);
  }

  private static Set<Flag> flags(SplittableRandom random) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    for (Flag flag : Flag.values()) {
      if (random.nextInt(8) == 0) {
        flags.add(flag);
      }
    }
    return flags;
  }

  private static Optional<Double> number(SplittableRandom random) {
    return random.nextBoolean() ? Optional.empty() : Optional.of(5000 * random.nextDouble());
  }

  private static <E extends Enum<E>> E any(E[] values, SplittableRandom random) {
    return List.of(values).get(random.nextInt(values.length));
  }

  private static String text(SplittableRandom random) {
    return TEXTS[random.nextInt(TEXTS.length)];
  }
}
