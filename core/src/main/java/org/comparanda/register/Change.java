package org.comparanda.register;

/**
 * One thing that became another.
 *
 * @param what field, or bone and code
 * @param was old value as text, empty for none
 * @param is new value as text, empty for none
 */
public record Change(String what, String was, String is) {
  /** One line, as the Day Book has it. */
  public String line() {
    return what + ": \"" + was + "\" -> \"" + is + "\"";
  }
}
