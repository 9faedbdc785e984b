package org.comparanda.gui.houserules;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRules;
import org.comparanda.house.Rights;
import org.comparanda.measurement.People;
import org.comparanda.measurement.PersonId;

/**
 * What the House Rules screen works with.
 *
 * @param sits who sat at this computer last
 */
public record RulesRoom(
    HouseRules rules,
    Supplier<Rights> rights,
    People people,
    Optional<PersonId> sits,
    Words words,
    Locale locale,
    Clock clock) {}
