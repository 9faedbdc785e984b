package org.comparanda.capture;

import org.comparanda.capture.FieldState.Showing;

/**
 * The key table: from what the field shows and what was typed to a command. The number pad alone is
 * enough for everything.
 *
 * <pre>
 * digits, point or comma   the reading
 * Enter                    accept, next; on an empty field nothing
 * -  on an empty field     "not possible": the reasons 1 to 5
 * *  on an empty field     one more take
 * /  on an empty field     undo
 * +  on an empty field     record the call
 * +  while a proposal shows   take the proposal
 * .. on an empty field     previous field (two commas, or Backspace, as well)
 * 00 Enter, or F1          definition large
 * 0 and a digit, Enter     what is no reading: see {@link Errand}; 0 Enter lists them
 * in a question            digits and Enter answer, Escape or - leaves it
 * ---, or Ctrl+Shift+H     STOP: asks once
 * </pre>
 */
public final class Keys {
  private static final String UNIT_LETTERS = "mcinMCIN″\" ";

  private Keys() {}

  /** What a character does that a hand typed. */
  public static Command typed(FieldState field, char key) {
    if (key == '\n' || key == '\r') {
      return pressed(field, NamedKey.ENTER);
    }
    return switch (field.showing()) {
      case REASONS -> reason(field.text(), key);
      case STOP_QUESTION -> Command.Plain.NO_STOP;
      case ASKED -> answer(field.text(), key);
      case FIELD, PROPOSAL -> field.text().isEmpty() ? onEmpty(key) : onText(field, key);
    };
  }

  /** What a key does that types nothing. */
  public static Command pressed(FieldState field, NamedKey key) {
    if (key == NamedKey.STOP) {
      return Command.Plain.ASK_STOP;
    }
    return switch (field.showing()) {
      case REASONS -> Command.Plain.HIDE_REASONS;
      case STOP_QUESTION -> key == NamedKey.ENTER ? Command.Plain.STOP : Command.Plain.NO_STOP;
      case ASKED -> inQuestion(field.text(), key);
      case FIELD, PROPOSAL -> onField(field.text(), key);
    };
  }

  /** What a burst does: it is never taken for commands, and never added to what a hand typed. */
  public static Command burst(FieldState field, String text) {
    return switch (field.showing()) {
      case REASONS, ASKED, STOP_QUESTION ->
          new Command.Ignored("The caliper sent a value while a question was open. Send it again.");
      case FIELD, PROPOSAL ->
          field.text().isEmpty()
              ? new Command.AcceptBurst(text)
              : new Command.Ignored(
                  "The field holds \""
                      + field.text()
                      + "\" and the caliper sent \""
                      + text.strip()
                      + "\". Clear the field and send the value again.");
    };
  }

  private static Command onEmpty(char key) {
    return switch (key) {
      case '-' -> Command.Plain.SHOW_REASONS;
      case '*' -> Command.Plain.ANOTHER_TAKE;
      case '/' -> Command.Plain.UNDO;
      case '+' -> Command.Plain.RECORD_CALL;
      default -> edit("", key);
    };
  }

  private static Command onText(FieldState field, char key) {
    boolean twiceTheMark =
        (field.text().equals(".") && key == '.') || (field.text().equals(",") && key == ',');
    if (twiceTheMark) {
      return Command.Plain.PREVIOUS;
    }
    if (key == '+' && field.showing() == Showing.PROPOSAL) {
      return new Command.AcceptProposal(field.text());
    }
    return edit(field.text(), key);
  }

  private static Command edit(String text, char key) {
    boolean partOfALength = (key >= '0' && key <= '9') || key == '.' || key == ',';
    return partOfALength || UNIT_LETTERS.indexOf(key) >= 0
        ? new Command.Edit(text + key)
        : new Command.Ignored(
            "\"" + key + "\" does nothing here. Accept or clear the field first.");
  }

  private static Command onField(String text, NamedKey key) {
    return switch (key) {
      case ENTER -> entered(text);
      case BACKSPACE ->
          text.isEmpty()
              ? Command.Plain.PREVIOUS
              : new Command.Edit(text.substring(0, text.length() - 1));
      case ESCAPE -> new Command.Edit("");
      case DEFINITION -> new Command.Do(Errand.DEFINITION);
      case STOP -> Command.Plain.ASK_STOP;
    };
  }

  private static Command entered(String text) {
    if (text.isBlank()) {
      return Command.Plain.STAY;
    }
    if (text.equals("0")) {
      return Command.Plain.LIST_ERRANDS;
    }
    return Errand.ofText(text)
        .<Command>map(Command.Do::new)
        .orElseGet(() -> new Command.Accept(text));
  }

  /** In a question only digits are typed; the dash leaves it. */
  private static Command answer(String text, char key) {
    if (key >= '0' && key <= '9') {
      return new Command.Edit(text + key);
    }
    return key == '-'
        ? Command.Plain.NO_ANSWER
        : new Command.Ignored("Digits and Enter answer; Escape or - leaves the question.");
  }

  private static Command inQuestion(String text, NamedKey key) {
    return switch (key) {
      case ENTER -> new Command.Answer(text);
      case BACKSPACE ->
          text.isEmpty()
              ? Command.Plain.NO_ANSWER
              : new Command.Edit(text.substring(0, text.length() - 1));
      case ESCAPE, DEFINITION -> Command.Plain.NO_ANSWER;
      case STOP -> Command.Plain.ASK_STOP;
    };
  }

  /** While the reasons show, the field's text holds the dashes typed since: one more, then STOP. */
  private static Command reason(String dashes, char key) {
    if (key == '-') {
      return dashes.isEmpty() ? new Command.Edit("-") : Command.Plain.ASK_STOP;
    }
    return NotPossible.ofKey(key)
        .<Command>map(Command.CannotTake::new)
        .orElse(Command.Plain.HIDE_REASONS);
  }
}
