package org.comparanda.daybook;

/**
 * Which entries are asked for; what is empty asks for all.
 *
 * @param person id of the person who made the change
 * @param kind word that the subject begins with
 * @param text a part of the subject or of what was said, in any case
 */
public record DayBookFilter(String person, String kind, String text) {
  /** All entries. */
  public static DayBookFilter all() {
    return new DayBookFilter("", "", "");
  }

  public DayBookFilter withPerson(String next) {
    return new DayBookFilter(next, kind, text);
  }

  public DayBookFilter withKind(String next) {
    return new DayBookFilter(person, next, text);
  }

  public DayBookFilter withText(String next) {
    return new DayBookFilter(person, kind, next);
  }
}
