package org.comparanda.tray;

/**
 * A lot: where it comes from, what is dangerous about it, how sensitive its places are.
 *
 * @param id name of the lot, as its trays have it
 * @param notes provenance as recorded, and hazards, shown before its first bone
 * @param places whether the recorded places of its bones may leave the house
 */
public record Lot(String id, LotNotes notes, Places places, String remarks) {
  /** Whether recorded places may leave the house. */
  public enum Places {
    /** Published or harmless: they go out. */
    GO_OUT,
    /** Only a person with the right opens them. */
    HELD_BACK,
    /** Nobody opens them, whatever their rights: the permit or the law says so. */
    NEVER_OUT
  }

  public Lot withNotes(LotNotes next) {
    return new Lot(id, next, places, remarks);
  }

  public Lot withPlaces(Places next) {
    return new Lot(id, notes, next, remarks);
  }

  public Lot withRemarks(String next) {
    return new Lot(id, notes, places, next);
  }

  /** A lot of which nothing more is recorded: its places are held back. */
  public static Lot named(String id) {
    return new Lot(id, LotNotes.none(), Places.HELD_BACK, "");
  }
}
