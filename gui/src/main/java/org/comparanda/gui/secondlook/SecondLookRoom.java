package org.comparanda.gui.secondlook;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRules;
import org.comparanda.measurement.People;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Trait;
import org.comparanda.tray.Trays;

/**
 * What the Second Look screen works with.
 *
 * @param desk the desk by the rules of the house now, whose changes stand in the Day Book as that
 *     person's
 * @param sits who sat at this computer last
 * @param taxa as the house names them now
 * @param traitsNow of look-alike pairs
 */
public record SecondLookRoom(
    Function<PersonId, LookDesk> desk,
    Trays trays,
    HouseRules rules,
    People people,
    Optional<PersonId> sits,
    Protocol protocol,
    Supplier<TaxonTree> taxa,
    Supplier<List<Trait>> traitsNow,
    Words words,
    Locale locale,
    Clock clock) {
  TaxonTree tree() {
    return taxa.get();
  }

  List<Trait> traits() {
    return traitsNow.get();
  }
}
