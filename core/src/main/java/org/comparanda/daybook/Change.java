package org.comparanda.daybook;

/**
 * What an entry says of its subject; its three lines are the entry's content.
 *
 * @param fingerprint hash of the row as it is now; {@link #GONE} when it was taken away
 * @param by id of the person who changed it; empty where the row itself says so or nobody is known
 * @param words what was done, for people to read; may be empty. Names of people never stand here
 */
public record Change(String fingerprint, String by, String words) {
  /** Stands for the fingerprint of a row that is no longer there. */
  public static final String GONE = "gone";

  public Change {
    by = oneLine(by);
    words = oneLine(words);
  }

  /** The content of an entry. */
  public String content() {
    return fingerprint + "\n" + by + "\n" + words;
  }

  /** Reads an entry's content; one line alone is a bare fingerprint. */
  public static Change read(String content) {
    String[] lines = content.split("\n", 3);
    return new Change(lines[0], lines.length > 1 ? lines[1] : "", lines.length > 2 ? lines[2] : "");
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }
}
