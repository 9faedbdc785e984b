package org.comparanda.exchange.table;

import static org.comparanda.exchange.table.TableFixture.lines;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongTableTest {
  private static final TableOptions PLAIN = TableOptions.withDefaults();

  @TempDir Path folder;
  private TableFixture files;

  @BeforeEach
  void prepare() {
    files = new TableFixture(folder);
  }

  @Test
  void theSameReadingsMakeTheSameShelfInBothShapes() {
    Shelf wide =
        files.shelf(
            PLAIN,
            lines(
                "animal,taxon,element,side,flags,GL [mm],Bd [mm]",
                "A,Ovis aries,humerus,left,,140.1,30",
                "A,Ovis aries,humerus,right,,141,",
                "B,Capra hircus,femur,left,cast,150,"));
    Shelf tall =
        files.shelf(
            PLAIN,
            lines(
                "animal,taxon,element,side,flags,measurement,value,unit",
                "A,Ovis aries,humerus,left,,GL,140.1,mm",
                "A,Ovis aries,humerus,right,,GL,14.1,cm",
                "B,Capra hircus,femur,left,cast,GL,150,",
                "A,Ovis aries,humerus,left,,Bd,30,mm"));
    assertEquals(wide, tall);
  }

  @Test
  void theElementMayStandBeforeTheCode() {
    Shelf tall =
        files.shelf(
            PLAIN,
            lines(
                "animal,taxon,measurement,value",
                "A,Ovis aries,humerus.GL,140",
                "A,Ovis aries,femur.GL,150"));
    assertEquals(2, tall.animals().get(0).bones().size());
  }

  @Test
  void eachProblemIsNamedWithItsRow() {
    List<String> lines =
        files
            .refused(
                PLAIN,
                lines(
                    "animal,taxon,element,measurement,value,unit",
                    "A,Ovis aries,humerus,GL,140,mm",
                    "A,Ovis aries,humerus,GL,141,mm",
                    "A,Ovis aries,humerus,,12,mm",
                    "A,Ovis aries,humerus,Bx,12,mm",
                    "A,Ovis aries,humerus,Bd,wide,mm",
                    "A,Ovis aries,humerus,Bd,30,ell",
                    "A,Capra hircus,humerus,Bd,,mm"))
            .lines();
    assertAll(
        () -> assertLine(lines, "row 3, column measurement: the bone has this measurement"),
        () -> assertLine(lines, "row 4, column measurement: it is not said what was measured"),
        () -> assertLine(lines, "row 5, column measurement: Bx isn't measured on the element"),
        () -> assertLine(lines, "row 6, column value: not a number: \"wide\""),
        () -> assertLine(lines, "row 7, column unit: not a unit: \"ell\""),
        () -> assertLine(lines, "row 8, column taxon: the same bone has another entry in row 2"));
  }

  @Test
  void aMeasurementInAnotherUnitIsDoubtedAndCanBeSaid() {
    String inches =
        lines(
            "animal,taxon,element,measurement,value",
            "A,Ovis aries,humerus,GL,5.5",
            "A,Ovis aries,humerus,Bd,30",
            "B,Ovis aries,humerus,GL,5.6",
            "B,Ovis aries,humerus,Bd,31");
    assertAll(
        () -> assertLine(files.refused(PLAIN, inches).lines(), "Say --unit GL=in if it is"),
        () ->
            assertEquals(
                139.7, // 5.5 · 25.4 by hand
                files
                    .shelf(PLAIN.withUnit("GL", LengthUnit.INCH), inches)
                    .animals()
                    .get(0)
                    .bones()
                    .get(0)
                    .values()
                    .get(TableFixture.GL),
                1e-9)); // one multiplication in doubles
  }

  @Test
  void otherColumnsAreRefusedOrLeftAside() {
    String table =
        lines("animal,taxon,element,measurement,value,shelfmark", "A,Ovis aries,humerus,GL,140,x");
    assertAll(
        () -> assertLine(files.refused(PLAIN, table).lines(), "leave it aside by --leave"),
        () ->
            assertEquals(
                1,
                files
                    .shelf(PLAIN.withAside(java.util.Set.of("shelfmark")), table)
                    .animals()
                    .size()));
  }

  @Test
  void bonesInHandAreGatheredFromTheirRows() {
    List<BoneInHand> bones =
        TableFixture.reader(PLAIN)
            .bones(
                TableFixture.sixAnimals(),
                files.file(
                    lines(
                        "bone,element,measurement,value",
                        "1,humerus,GL,140",
                        "2,humerus,GL,141",
                        "1,humerus,Bd,30")))
            .fold(
                read -> read.content().toList(),
                report -> {
                  throw new AssertionError(String.join("\n", report.lines()));
                });
    assertAll(
        () -> assertEquals(2, bones.size()),
        () -> assertEquals(2, bones.get(0).values().size()),
        () -> assertEquals("1", bones.get(0).id()));
  }

  private static void assertLine(List<String> lines, String words) {
    assertTrue(lines.stream().anyMatch(l -> l.contains(words)), String.join("\n", lines));
  }
}
