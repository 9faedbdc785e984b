package org.comparanda.gui.shelf.keeping;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.function.Supplier;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.check.AcceptedFindings;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.register.Register;
import org.comparanda.taxon.TaxonTree;

/** What the keeper's pages look at. */
public record KeeperRoom(
    ReferenceAnimals animals,
    Register register,
    AcceptedFindings accepted,
    ReadingLog readings,
    Protocol protocol,
    Supplier<TaxonTree> taxa,
    Clock clock,
    Words words,
    Locale locale) {
  /** The taxa as the house names them now. */
  TaxonTree tree() {
    return taxa.get();
  }

  public LocalDate today() {
    return LocalDate.now(clock.withZone(ZoneId.systemDefault()));
  }

  public String element(ElementKey key) {
    return protocol.element(key).map(Element::name).orElse(key.value());
  }
}
