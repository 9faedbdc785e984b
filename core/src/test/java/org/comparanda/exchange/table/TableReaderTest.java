package org.comparanda.exchange.table;

import static org.comparanda.exchange.table.TableFixture.BD;
import static org.comparanda.exchange.table.TableFixture.GL;
import static org.comparanda.exchange.table.TableFixture.lines;
import static org.comparanda.exchange.table.TableFixture.reader;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables that are read. All values are invented. */
class TableReaderTest {
  private static final TableOptions PLAIN = TableOptions.withDefaults();
  private static final TableOptions REGISTERING = PLAIN.withUnknown(TableOptions.Unknown.REGISTER);

  @TempDir Path folder;
  private TableFixture files;

  @BeforeEach
  void files() {
    files = new TableFixture(folder);
  }

  @Test
  void rowsThatShareACatalogueNumberAreOneAnimal() {
    Shelf shelf =
        files.shelf(
            PLAIN,
            lines(
                "animal,taxon,element,side,sex,drawer,body_mass [kg],GL,Bd",
                "KV-1,Ovis aries,humerus,left,f,12,45,140.5,30",
                "KV-1,Ovis aries,humerus,right,f,12,45,141,-",
                "KV-2,Capra hircus,femur,left,,,,200,"));
    Animal first = shelf.animals().get(0);
    assertAll(
        () -> assertEquals(2, shelf.animals().size()),
        () -> assertEquals(2, first.bones().size()),
        () -> assertEquals(Optional.of(new TaxonName("Ovis aries")), first.taxon()),
        () -> assertEquals(Optional.of("12"), first.drawer()),
        () -> assertEquals(Optional.of(45_000.0), first.bodyMassG()),
        () -> assertEquals("f", first.sex()),
        () -> assertEquals(Map.of(GL, 140.5, BD, 30.0), first.bones().get(0).values()),
        () -> assertEquals(Map.of(GL, 141.0), first.bones().get(1).values()));
  }

  @Test
  void aTableWithoutCatalogueNumbersHasOneAnimalARow() {
    Shelf shelf =
        files.shelf(PLAIN, "taxon,element,GL\nOvis aries,humerus,140\nOvis aries,humerus,150\n");
    assertEquals(
        List.of("row 2", "row 3"), shelf.animals().stream().map(a -> a.id().value()).toList());
  }

  @Test
  void byteOrderMarkSemicolonAndDecimalCommaAreFoundAndReported() {
    Path table =
        files.file(
            "\uFEFFtaxon;element;GL\r\nOvis aries;humerus;140,5\r\nOvis aries;femur;150\r\n");
    TableRead<Shelf> read =
        reader(PLAIN)
            .shelf(table)
            .fold(
                r -> r,
                report -> {
                  throw new AssertionError(report.lines().toString());
                });
    assertAll(
        () -> assertEquals("semicolon between columns", read.facts().layout()),
        () -> assertEquals(DecimalMark.COMMA, read.facts().decimal()),
        () -> assertEquals(2, read.facts().rows()),
        () ->
            assertEquals(
                140.5, read.content().animals().get(0).bones().get(0).values().get(GL), 0));
  }

  @Test
  void quotedDecimalCommasAreReadInACommaTable() {
    Shelf shelf = files.shelf(PLAIN, "taxon,element,GL\nOvis aries,humerus,\"140,5\"\n");
    assertEquals(140.5, shelf.animals().get(0).bones().get(0).values().get(GL), 0);
  }

  @Test
  void threeDecimalsAreReadOnceThePersonSaysWhichMarkItIs() {
    String text = "taxon\telement\tGL\nOvis aries\thumerus\t140,125\n";
    assertEquals(
        140.125,
        files
            .shelf(PLAIN.withDecimal(DecimalMark.COMMA), text)
            .animals()
            .get(0)
            .bones()
            .get(0)
            .values()
            .get(GL),
        0);
  }

  @Test
  void unitsInBracketsAndToldOnesBecomeMillimetres() {
    String text = "taxon,element,GL [cm],Bd\nOvis aries,humerus,14.05,1.25\n";
    Map<MeasurementCode, Double> values =
        files
            .shelf(PLAIN.withUnit("Bd", LengthUnit.INCH), text)
            .animals()
            .get(0)
            .bones()
            .get(0)
            .values();
    // 14.05 cm and 1.25 in by definition of the units; 1e-12: one multiplication
    assertAll(
        () -> assertEquals(140.5, values.get(GL), 1e-12),
        () -> assertEquals(31.75, values.get(BD), 1e-12));
  }

  @Test
  void headersAreMappedAndAMappingThatTheTableLacksIsIgnored() {
    Shelf shelf =
        files.shelf(
            PLAIN.withAs(Map.of("taxon", "kind", "animal", "no", "side", "seite")),
            "no,kind,element,GL\n7,Ovis aries,humerus,140\n");
    assertEquals("7", shelf.animals().get(0).id().value());
  }

  @Test
  void onlyThePickedMeasurementsAreReadBesideTheReservedOnes() {
    Shelf shelf =
        files.shelf(
            PLAIN.withOnly(List.of("GL")),
            "taxon,element,GL,Bd,island\nOvis aries,humerus,140,thick,north\n");
    assertEquals(Map.of(GL, 140.0), shelf.animals().get(0).bones().get(0).values());
  }

  @Test
  void aReservedNameThatIsPickedIsAPlainNumber() {
    Shelf shelf =
        files.shelf(
            REGISTERING.withOnly(List.of("wing", "body_mass")),
            "taxon,wing,body_mass\nAdelie,181,3750\n");
    assertEquals(
        Map.of(new MeasurementCode("wing"), 181.0, new MeasurementCode("body_mass"), 3750.0),
        shelf.animals().get(0).bones().get(0).values());
  }

  @Test
  void theElementGivenFillsEmptyCellsAndPicksItsOwnRows() {
    Shelf shelf =
        files.shelf(
            PLAIN.withElement(TableFixture.HUMERUS),
            lines(
                "animal,taxon,element,GL",
                "1,Ovis aries,,140",
                "2,Ovis aries,femur,200",
                "3,Ovis aries,humerus,150"));
    assertEquals(List.of("1", "3"), shelf.animals().stream().map(a -> a.id().value()).toList());
  }

  @Test
  void registeredColumnsComeAsPlainNumbersOfAnUnnamedElement() {
    Path table = files.file("taxon,snout\nNovus ignotus,-3.5\n");
    TableRead<Shelf> read =
        reader(REGISTERING.withNumbers(TableOptions.Numbers.ANY_SIGN))
            .shelf(table)
            .fold(
                r -> r,
                report -> {
                  throw new AssertionError(report.lines().toString());
                });
    MeasurementCode snout = new MeasurementCode("snout");
    assertAll(
        () ->
            assertEquals(
                -3.5, read.content().animals().get(0).bones().get(0).values().get(snout), 0),
        () ->
            assertTrue(
                read.protocol().measurement(ElementKey.UNNAMED, snout).isPresent(),
                "the protocol knows the column"));
  }

  @Test
  void bonesInHandKeepSidePortionFusionAndFlags() {
    Path table =
        files.file(
            lines(
                "bone,element,side,portion,fusion_proximal,fusion_distal,flags,GL",
                "T-1,humerus,left,distal,can't see,unfused,crushed | gnawed,140",
                "T-2,carapace,,,,,,"));
    List<BoneInHand> bones =
        reader(PLAIN)
            .bones(new Shelf(List.of()), table)
            .fold(
                r -> r.content().toList(),
                report -> {
                  throw new AssertionError(report.lines().toString());
                });
    BoneInHand first = bones.get(0);
    assertAll(
        () -> assertEquals("T-1", first.id()),
        () -> assertEquals(Side.LEFT, first.side()),
        () -> assertEquals(Portion.DISTAL, first.portion()),
        () -> assertEquals(Fusion.UNFUSED, first.state().distal()),
        () -> assertEquals(Set.of(Flag.CRUSHED, Flag.GNAWED), first.state().flags()),
        () -> assertEquals(Side.AXIAL, bones.get(1).side()));
  }

  @Test
  void blankLinesAndCellsMarkedMissingAreNoProblem() {
    Shelf shelf = files.shelf(PLAIN, "taxon,element,GL,Bd\n\nOvis aries,humerus,NA,30\n\n\n");
    assertEquals(Map.of(BD, 30.0), shelf.animals().get(0).bones().get(0).values());
  }
}
