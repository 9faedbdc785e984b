package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.comparanda.capture.FieldState.Showing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The key table of the Bench, key by key. */
class KeysTest {
  private static final FieldState EMPTY = FieldState.empty();
  private static final FieldState REASONS = EMPTY.withShowing(Showing.REASONS);

  @ParameterizedTest
  @CsvSource({
    "-, SHOW_REASONS",
    "*, ANOTHER_TAKE",
    "/, UNDO",
    "+, RECORD_CALL",
  })
  void keyOnAnEmptyFieldIsACommand(char key, Command.Plain expected) {
    assertEquals(expected, Keys.typed(EMPTY, key));
  }

  @ParameterizedTest
  @CsvSource({"-", "*", "/", "+"})
  void sameKeyAfterDigitsIsNotACommand(char key) {
    assertInstanceOf(Command.Ignored.class, Keys.typed(EMPTY.withText("12"), key));
  }

  @Test
  void digitsAndMarksFillTheField() {
    assertEquals(new Command.Edit("1"), Keys.typed(EMPTY, '1'));
    assertEquals(new Command.Edit("12."), Keys.typed(EMPTY.withText("12"), '.'));
    assertEquals(new Command.Edit("12,"), Keys.typed(EMPTY.withText("12"), ','));
  }

  @Test
  void enterAcceptsAndStaysOnAnEmptyField() {
    assertEquals(Command.Plain.STAY, Keys.pressed(EMPTY, NamedKey.ENTER));
    assertEquals(new Command.Accept("12.3"), Keys.pressed(EMPTY.withText("12.3"), NamedKey.ENTER));
    assertEquals(new Command.Accept("12.3"), Keys.typed(EMPTY.withText("12.3"), '\r'));
  }

  @Test
  void twoMarksOrBackspaceGoToThePreviousField() {
    assertEquals(Command.Plain.PREVIOUS, Keys.typed(EMPTY.withText("."), '.'));
    assertEquals(Command.Plain.PREVIOUS, Keys.typed(EMPTY.withText(","), ','));
    assertEquals(Command.Plain.PREVIOUS, Keys.pressed(EMPTY, NamedKey.BACKSPACE));
    assertEquals(new Command.Edit("1"), Keys.pressed(EMPTY.withText("12"), NamedKey.BACKSPACE));
  }

  @Test
  void twoZerosAndEnterShowTheDefinition() {
    Command definition = new Command.Do(Errand.DEFINITION);
    assertEquals(definition, Keys.pressed(EMPTY.withText("00"), NamedKey.ENTER));
    assertEquals(definition, Keys.pressed(EMPTY, NamedKey.DEFINITION));
  }

  @ParameterizedTest
  @CsvSource({
    "01, MORE_LIKE_THIS",
    "02, OTHER_SIDE",
    "03, OTHER_ELEMENT",
    "04, PIECES",
    "05, ACROSS_BREAK",
    "06, FOUND_TOGETHER",
    "07, SLIP",
    "08, CALIPER",
    "09, KEY_CARD",
  })
  void zeroAndADigitAskForWhatIsNoReading(String text, Errand errand) {
    assertEquals(new Command.Do(errand), Keys.pressed(EMPTY.withText(text), NamedKey.ENTER));
  }

  @Test
  void zeroAloneListsWhatCanBeAskedFor() {
    assertEquals(Command.Plain.LIST_ERRANDS, Keys.pressed(EMPTY.withText("0"), NamedKey.ENTER));
  }

  @ParameterizedTest
  @CsvSource({"0.5", "012", "1"})
  void whatIsNotZeroAndOneDigitStaysAReading(String text) {
    assertEquals(new Command.Accept(text), Keys.pressed(EMPTY.withText(text), NamedKey.ENTER));
  }

  @Test
  void aQuestionTakesDigitsAndEnterAndIsLeftByDashOrEscape() {
    FieldState asked = EMPTY.withShowing(Showing.ASKED);
    assertEquals(new Command.Edit("1"), Keys.typed(asked, '1'));
    assertEquals(new Command.Answer("12"), Keys.pressed(asked.withText("12"), NamedKey.ENTER));
    assertEquals(Command.Plain.NO_ANSWER, Keys.typed(asked, '-'));
    assertEquals(Command.Plain.NO_ANSWER, Keys.pressed(asked, NamedKey.ESCAPE));
    assertInstanceOf(Command.Ignored.class, Keys.typed(asked, '+'));
    assertInstanceOf(Command.Ignored.class, Keys.burst(asked, "12.3\r\n"));
    assertEquals(Command.Plain.ASK_STOP, Keys.pressed(asked, NamedKey.STOP));
  }

  @Test
  void reasonIsChosenByNumber() {
    assertEquals(new Command.CannotTake(NotPossible.BROKEN), Keys.typed(REASONS, '1'));
    assertEquals(new Command.CannotTake(NotPossible.UNSURE_WHERE), Keys.typed(REASONS, '5'));
    assertEquals(Command.Plain.HIDE_REASONS, Keys.typed(REASONS, '6'));
    assertEquals(Command.Plain.HIDE_REASONS, Keys.pressed(REASONS, NamedKey.ESCAPE));
  }

  @Test
  void threeDashesAskOnceAndEnterStops() {
    assertEquals(Command.Plain.SHOW_REASONS, Keys.typed(EMPTY, '-'));
    assertEquals(new Command.Edit("-"), Keys.typed(REASONS, '-'));
    assertEquals(Command.Plain.ASK_STOP, Keys.typed(REASONS.withText("-"), '-'));
    assertEquals(Command.Plain.ASK_STOP, Keys.pressed(EMPTY.withText("12"), NamedKey.STOP));
    FieldState question = EMPTY.withShowing(Showing.STOP_QUESTION);
    assertEquals(Command.Plain.STOP, Keys.pressed(question, NamedKey.ENTER));
    assertEquals(Command.Plain.NO_STOP, Keys.typed(question, '5'));
  }

  @Test
  void plusTakesAProposalThatShows() {
    FieldState proposal = new FieldState("1.25", Showing.PROPOSAL);
    assertEquals(new Command.AcceptProposal("1.25"), Keys.typed(proposal, '+'));
    assertEquals(new Command.Accept("1.25"), Keys.pressed(proposal, NamedKey.ENTER));
  }

  @Test
  void burstIsNeverACommandAndNeverJoinsWhatAHandTyped() {
    assertEquals(new Command.AcceptBurst("---"), Keys.burst(EMPTY, "---"));
    assertInstanceOf(Command.Ignored.class, Keys.burst(EMPTY.withText("1"), "2.34\r"));
    assertInstanceOf(Command.Ignored.class, Keys.burst(REASONS, "2.34\r"));
  }
}
