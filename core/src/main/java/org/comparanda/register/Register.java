package org.comparanda.register;

import java.util.List;
import java.util.Optional;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;

/**
 * Repository of the animals' cards. A change is stored whole, with its entry in the Day Book, or
 * not at all; nothing is deleted.
 */
public interface Register {
  /** All animals, in catalogue order, those that left the shelf included. */
  List<AnimalCard> all();

  /** One animal's card, whether on the shelf or not. */
  Optional<AnimalCard> card(AnimalId id);

  /** Adds an animal; none when its number was ever given. */
  Outcome<AnimalCard> add(AnimalCard card, ChangeNote note);

  /**
   * Puts a card in place of the one that was looked at; none when somebody changed it meanwhile.
   *
   * @return what changed, nothing when the two are equal
   */
  Outcome<List<Change>> change(AnimalCard before, AnimalCard after, ChangeNote note);

  /**
   * Moves a bone that was registered under the wrong element, side or portion, with its flags, its
   * values and the readings in the log; none when somebody changed the card meanwhile or there is
   * no such bone.
   *
   * @return what changed on the card; nothing where the bone was measured and not put on it yet
   */
  Outcome<List<Change>> move(AnimalCard seen, BoneMove move, ChangeNote note);

  /** What {@link #merge} would come to. Changes nothing. */
  Outcome<Merge> wouldMerge(AnimalId kept, AnimalId other);

  /**
   * Makes a second number of an animal stand for the first: see {@link Merge}. Bones on trays that
   * belong to the second belong to the first from now on.
   */
  Outcome<Merge> merge(AnimalId kept, AnimalId other, ChangeNote note);

  /** Takes an animal off the shelf: out of every fit, still found. */
  Outcome<AnimalCard> retire(AnimalId id, ChangeNote note);

  /** Puts a retired animal back. */
  Outcome<AnimalCard> bringBack(AnimalId id, ChangeNote note);

  /** What the Day Book says of an animal, oldest first; its import stands with its table's. */
  List<DayBookEntry> history(AnimalId id);
}
