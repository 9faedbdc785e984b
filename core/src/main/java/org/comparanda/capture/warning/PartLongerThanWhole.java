package org.comparanda.capture.warning;

import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PartRule;

/** The value would make a part longer than its whole. */
record PartLongerThanWhole() implements EntryCheck {
  @Override
  public Optional<Warning> check(Entry entry) {
    return entry.partRules().stream()
        .filter(rule -> broken(rule, entry))
        .findFirst()
        .map(
            rule ->
                Warning.of(
                    rule.part() + " would be longer than " + rule.whole() + ", which holds it."));
  }

  private static boolean broken(PartRule rule, Entry entry) {
    Optional<Double> part = mm(rule.part(), entry);
    Optional<Double> whole = mm(rule.whole(), entry);
    boolean aboutThisField = rule.part().equals(entry.code()) || rule.whole().equals(entry.code());
    return aboutThisField && part.isPresent() && whole.isPresent() && part.get() > whole.get();
  }

  private static Optional<Double> mm(MeasurementCode code, Entry entry) {
    return code.equals(entry.code())
        ? Optional.of(entry.mm())
        : Optional.ofNullable(entry.others().get(code));
  }
}
