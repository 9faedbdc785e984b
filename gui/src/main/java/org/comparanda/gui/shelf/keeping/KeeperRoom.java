package org.comparanda.gui.shelf.keeping;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.beans.property.StringProperty;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.check.AcceptedFindings;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.register.Register;
import org.comparanda.stock.ElementWatch;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.taxon.TaxonTree;

/**
 * What the keeper's pages look at.
 *
 * @param rules by which the shelf is tried, as the house has them now
 */
public record KeeperRoom(
    ReferenceAnimals animals,
    Register register,
    AcceptedFindings accepted,
    ReadingLog readings,
    Protocol protocol,
    Supplier<TaxonTree> taxa,
    Supplier<ComparisonRules> rules,
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

  /** Says on {@code ui} which element is gone through; ends when {@code stopped} says so. */
  ElementWatch watch(String key, StringProperty into, Executor ui, BooleanSupplier stopped) {
    return new ElementWatch() {
      @Override
      public void begins(ElementKey element, int number, int of) {
        ui.execute(
            () -> {
              if (!stopped()) {
                into.set(words.get(key, element(element), number, of));
              }
            });
      }

      @Override
      public boolean stopped() {
        return stopped.getAsBoolean();
      }
    };
  }

  public String element(ElementKey key) {
    return protocol.element(key).map(Element::name).orElse(key.value());
  }
}
