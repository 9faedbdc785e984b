package org.comparanda.register;

/**
 * Why a card can't become what was typed. Nothing of the card is then stored.
 *
 * @param field where
 * @param value what was typed
 * @param message what is wrong with it
 * @param remedy what to type instead
 */
public record CardProblem(CardField field, String value, String message, String remedy) {
  /** One line with all of it. */
  public String line() {
    return field.words() + ": \"" + value + "\" " + message + " " + remedy;
  }
}
