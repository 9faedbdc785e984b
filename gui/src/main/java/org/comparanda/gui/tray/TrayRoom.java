package org.comparanda.gui.tray;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRules;
import org.comparanda.house.Rights;
import org.comparanda.measurement.People;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Lots;
import org.comparanda.tray.Numbering;
import org.comparanda.tray.Scraps;
import org.comparanda.tray.Search;
import org.comparanda.tray.Stops;
import org.comparanda.tray.Trait;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.Trays;

/**
 * What the Tray screen works with.
 *
 * @param traysBy the same trays, whose changes stand in the Day Book as that person's
 * @param numbering bone numbers; a rule that a person sets stands in the Day Book as theirs
 * @param rights who may do what now
 * @param lotsBy the same for lots
 * @param taxa as the house names them now
 * @param traitsNow of look-alike pairs
 * @param numbers what the numbers say beside a call
 * @param counts tallies of one lot, in lines
 */
public record TrayRoom(
    Trays trays,
    Function<PersonId, Trays> traysBy,
    Lots lots,
    Function<PersonId, Lots> lotsBy,
    Scraps scraps,
    Stops stops,
    HouseRules rules,
    Search search,
    Function<PersonId, Numbering> numbering,
    Supplier<Rights> rights,
    People people,
    ReadingLog readings,
    Protocol protocol,
    Supplier<TaxonTree> taxa,
    Supplier<List<Trait>> traitsNow,
    Numbers numbers,
    Function<String, List<String>> counts,
    Words words,
    Locale locale,
    Clock clock) {
  TaxonTree tree() {
    return taxa.get();
  }

  List<Trait> traits() {
    return traitsNow.get();
  }

  /** Says what the numbers say of a bone beside a name. */
  public interface Numbers {
    Beside of(Tray tray, TrayBone bone, TaxonName called);
  }
}
