package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.agreement.RepeatedReadings;

/** Writes the error of repeated readings. */
public final class ErrorJson {
  private final ProgramVersion program;

  public ErrorJson(ProgramVersion program) {
    this.program = program;
  }

  /** The figures, with the intraclass correlation that fits what the columns are. */
  public void write(Writer writer, RepeatedReadings readings, Outcome<Double> icc)
      throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object()
          .text("program", program.program())
          .text("version", program.version())
          .count("n", readings.subjects())
          .number("tem", readings.tem())
          .number("relativeTem", readings.relativeTem())
          .number("reliability", readings.reliability())
          .number("icc", icc)
          .number("bias", readings.bias())
          .name("limitsOfAgreement");
      Outcome<Interval> limits = readings.limitsOfAgreement();
      Optional<Interval> there = limits.value();
      if (there.isPresent()) {
        json.limits(there.get().lower(), there.get().upper());
      } else {
        json.couldNot(limits);
      }
      json.endObject();
    }
  }
}
