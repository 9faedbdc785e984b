package org.comparanda.oldcards;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.tables.CardWordTable;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Qualifier;
import org.junit.jupiter.api.Test;

/** Invented cards; what each says was decided by reading it. */
class CardParserTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final CardParser PARSER =
      new CardParser(CardWordTable.shipped(TABLES.protocol(), TABLES.taxa()));

  @Test
  void aPlainCardIsReadWhole() {
    Proposal read = PARSER.read("Ovis aries, humerus left dist., Bd 29.5 mm; site: Pit 4, north");
    assertAll(
        () -> assertEquals(Optional.of(new TaxonName("Ovis aries")), read.taxon()),
        () -> assertEquals(Optional.of(new ElementKey("humerus")), read.element()),
        () -> assertEquals(Side.LEFT, read.side()),
        () -> assertEquals(Portion.DISTAL, read.portion()),
        () -> assertEquals(29.5, mm(read, "Bd")),
        () -> assertEquals("29.5 mm", read.lengths().get(code("Bd")).asWritten()),
        () -> assertEquals("Pit 4, north", read.place()),
        () -> assertEquals(List.of(), read.leftOver()),
        () -> assertTrue(read.plain(), () -> String.join(" ", read.doubts())),
        () -> assertEquals("taxon element side portion measurement place", read.shape()));
  }

  @Test
  void germanWordsAndAbbreviationsAreRead() {
    Proposal read = PARSER.read("Reh, Oberschenkel li., GL=17,5 cm, verbrannt, Fundort Kellerwald");
    assertAll(
        () -> assertEquals(Optional.of(new TaxonName("Capreolus capreolus")), read.taxon()),
        () -> assertEquals(Optional.of(new ElementKey("femur")), read.element()),
        () -> assertEquals(Side.LEFT, read.side()),
        () -> assertEquals(175.0, mm(read, "GL")),
        () -> assertEquals(Set.of(Flag.BURNT), read.flags()),
        () -> assertEquals("Kellerwald", read.place()));
  }

  @Test
  void openNomenclatureIsKept() {
    assertAll(
        () -> assertEquals(Qualifier.CF, PARSER.read("cf. Ovis aries humerus").qualifier()),
        () -> assertEquals(Qualifier.SP, PARSER.read("Ovis sp. humerus").qualifier()),
        () -> assertEquals(Qualifier.UNCERTAIN, PARSER.read("Ovis aries? humerus").qualifier()),
        () -> assertFalse(PARSER.read("Ovis aries humerus r., dist. ?").plain()));
  }

  @Test
  void everyWordThatWasNotReadIsLeftOverAndPartOfTheShape() {
    Proposal read = PARSER.read("Box 12: sheep humerus, worn, given by the miller");
    assertAll(
        () -> assertEquals(List.of("Box", "12", "worn", "given", "by", "miller"), read.leftOver()),
        () ->
            assertEquals(
                "\"Box\" \"number\" taxon element \"worn\" \"given\" \"by\" \"miller\"",
                read.shape()));
  }

  @Test
  void twoAnswersToOneQuestionAreADoubtAndNoAnswer() {
    Proposal read = PARSER.read("sheep humerus and femur, left or right");
    assertAll(
        () -> assertEquals(Optional.empty(), read.element()),
        () -> assertEquals(Side.NOT_KNOWN, read.side()),
        () -> assertTrue(read.doubts().contains("Two bones were read: humerus, femur.")),
        () -> assertTrue(read.doubts().contains("Two sides were read: LEFT, RIGHT.")),
        () -> assertFalse(read.plain()));
  }

  @Test
  void nothingIsGuessed() {
    assertAll(
        () -> assertEquals(Optional.empty(), PARSER.read("humerus left").taxon()),
        () -> assertFalse(PARSER.read("sheep humerus, 142 mm").plain()), // a length of what?
        () -> assertTrue(PARSER.read("sheep humerus, GL 1,425 mm").lengths().isEmpty()),
        () -> assertFalse(PARSER.read("sheep humerus, GL 142 mm, GL 143 mm").plain()),
        () -> assertFalse(PARSER.read("sheep humerus, SCL 142 mm").plain()), // a shell's
        () ->
            assertEquals(
                List.of("GL has no unit: taken as mm.", "No side is said: not known."),
                PARSER.read("sheep humerus whole GL 142").taken()),
        () -> assertFalse(PARSER.read("3 pcs sheep humerus GL 142 mm").plain()),
        () -> assertEquals(3, PARSER.read("3x sheep humerus").count()));
  }

  @Test
  void humanRemainsAreNeverMadeIntoBones() {
    Proposal read = PARSER.read("Homo sapiens, femur left, GL 440 mm");
    assertAll(() -> assertTrue(read.namesHuman()), () -> assertFalse(read.plain()));
  }

  @Test
  void anyTextIsReadWithoutFailingAndEveryPieceStandsInIt() {
    SplittableRandom random = new SplittableRandom(20417);
    String letters = "abGLdx ?.,;:=0123456789\tüß'\"-/ Ovis humerus mm site";
    for (int i = 0; i < 2000; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(40);
      for (int k = 0; k < length; k++) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      String card = text.toString();
      Proposal read = PARSER.read(card);
      int end = 0;
      for (Piece piece : read.pieces()) {
        assertTrue(piece.from() >= end && piece.to() <= card.length(), card);
        end = piece.to();
      }
    }
  }

  private static double mm(Proposal read, String code) {
    return read.lengths().get(code(code)).length().mm();
  }

  private static MeasurementCode code(String code) {
    return new MeasurementCode(code);
  }
}
