package org.comparanda.tray;

/**
 * A lot and how sensitive its places are.
 *
 * @param id name of the lot, as its trays have it
 * @param places whether the recorded places of its bones may leave the house
 */
public record Lot(String id, Places places, String remarks) {
  /** Whether recorded places may leave the house. */
  public enum Places {
    /** Published or harmless: they go out. */
    GO_OUT,
    /** Only a person with the right opens them. */
    HELD_BACK,
    /** Nobody opens them, whatever their rights: the permit or the law says so. */
    NEVER_OUT
  }

  /** A lot of which nothing more is recorded: its places are held back. */
  public static Lot named(String id) {
    return new Lot(id, Places.HELD_BACK, "");
  }
}
