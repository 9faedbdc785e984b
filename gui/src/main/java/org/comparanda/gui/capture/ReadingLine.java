package org.comparanda.gui.capture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.capture.NotPossible;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.How;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Reading;

/** Writes the row of one measurement: what was taken, what is hidden, what counts. */
public record ReadingLine(Passes passes, Measurement measurement, Words words, Numbers numbers) {
  public ReadingRow row() {
    if (!passes.measurements().contains(measurement)) {
      return new ReadingRow(
          measurement.code(),
          measurement.name(),
          "",
          "",
          words.get(measurement.how() == How.CALIPER ? "gone" : "tape"),
          ReadingRow.Standing.GONE);
    }
    boolean now = passes.current().filter(p -> p.code().equals(measurement.code())).isPresent();
    return new ReadingRow(
        measurement.code(),
        passes.acrossBreak(measurement.code())
            ? measurement.name() + " (" + words.get("across") + ")"
            : measurement.name(),
        under(1),
        under(2) + third(),
        kept(),
        now ? ReadingRow.Standing.CURRENT : ReadingRow.Standing.WAITING);
  }

  private String under(int pass) {
    List<Reading> taken = taken(pass);
    if (taken.isEmpty()) {
      return "";
    }
    boolean seen = passes.visible(measurement.code()).stream().anyMatch(r -> r.pass() == pass);
    return seen ? written(taken) : words.get("hidden");
  }

  private String third() {
    return taken(3).isEmpty() ? "" : " \u00b7 " + under(3);
  }

  private List<Reading> taken(int pass) {
    return passes.counting(measurement.code()).stream().filter(r -> r.pass() == pass).toList();
  }

  private String written(List<Reading> taken) {
    return taken.stream().map(this::written).collect(Collectors.joining(" \u00b7 "));
  }

  private String written(Reading reading) {
    return reading.length().map(length -> numbers.upTo(length.mm(), 2)).orElse("\u2013");
  }

  /** The value that counts; not while a later pass hides a take that it was made of. */
  private String kept() {
    List<Reading> counting = passes.counting(measurement.code());
    Optional<Reading> refused =
        counting.stream().filter(r -> r.kind() == Reading.Kind.NOT_POSSIBLE).findFirst();
    if (refused.isPresent()) {
      return words.get("notpossible." + NotPossible.valueOf(refused.get().reason()).name());
    }
    int now = passes.current().map(Place::pass).orElse(Integer.MAX_VALUE);
    boolean waits = counting.stream().noneMatch(r -> r.pass() >= now) && now > 1 && now < 4;
    Double value = passes.values().get(measurement.code());
    return value == null || waits ? "" : numbers.fixed(value, 2);
  }
}
