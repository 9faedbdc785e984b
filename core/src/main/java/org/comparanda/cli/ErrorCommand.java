package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.ErrorJson;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.agreement.RepeatedReadings;
import org.comparanda.tables.ReferenceTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The error of repeated readings. */
@Command(
    name = "error",
    description = {
      "How well repeated readings agree: technical error of measurement, reliability, intraclass"
          + " correlation, limits of agreement.",
      "The table has one row per bone and one column per take or per person."
    },
    mixinStandardHelpOptions = true)
final class ErrorCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  @Parameters(paramLabel = "TABLE", description = "One row per bone, one column per reading.")
  private Path table = Path.of("");

  @Option(names = "--persons", description = "The columns are people, not takes of one person.")
  private boolean persons;

  ErrorCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    TableOptions options =
        tables
            .options()
            .withUnknown(TableOptions.Unknown.REGISTER)
            .withNumbers(TableOptions.Numbers.ANY_SIGN)
            .withTaxa(TableOptions.Taxa.OPTIONAL);
    TableRead<Shelf> read =
        ShelfArguments.table(terminal, ReferenceTables.shipped(), options, table);
    tables.everyMappingFound(List.of(read.facts()));
    List<MeasurementCode> columns = read.facts().measurements();
    List<double[]> rows = completeRows(read.content(), columns);
    RepeatedReadings readings =
        RepeatedReadings.of(rows.toArray(double[][]::new))
            .fold(
                r -> r,
                none -> {
                  throw new CannotDo(none.reason() + " " + none.remedy());
                });
    Outcome<Double> icc = persons ? readings.iccOfPersons() : readings.iccOfTakes();
    Optional<Path> out = json.file();
    if (out.isPresent()) {
      ErrorJson writer = new ErrorJson(ProgramName.current());
      JsonArgument.write(out.get(), w -> writer.write(w, readings, icc));
    } else {
      say(readings, icc, columns);
    }
    return Terminal.FINE;
  }

  private List<double[]> completeRows(Shelf shelf, List<MeasurementCode> columns) {
    List<double[]> rows = new ArrayList<>();
    int left = 0;
    for (Animal animal : shelf.animals()) {
      for (ShelfBone bone : animal.bones()) {
        Map<MeasurementCode, Double> values = bone.values();
        if (values.keySet().containsAll(columns)) {
          rows.add(columns.stream().mapToDouble(c -> values.getOrDefault(c, 0.0)).toArray());
        } else {
          left++;
        }
      }
    }
    if (left > 0) {
      terminal.note(left + " rows without every reading were left out.");
    }
    return rows;
  }

  private void say(RepeatedReadings readings, Outcome<Double> icc, List<MeasurementCode> columns) {
    terminal.say(
        readings.subjects()
            + " bones, readings "
            + String.join(", ", columns.stream().map(MeasurementCode::value).toList())
            + ".");
    terminal.say("  technical error of measurement " + Figures.five(readings.tem()));
    terminal.say("  in per cent of the mean        " + text(readings.relativeTem()));
    terminal.say("  reliability, 1 - TEM²/SD²      " + text(readings.reliability()));
    terminal.say(
        (persons ? "  ICC(2,1), columns are people   " : "  ICC(1,1), columns are takes    ")
            + text(icc));
    terminal.say("  bias, first minus second       " + text(readings.bias()));
    Outcome<Interval> limits = readings.limitsOfAgreement();
    terminal.say(
        "  limits of agreement            "
            + limits.<String>fold(
                l -> Figures.five(l.lower()) + " to " + Figures.five(l.upper()), n -> n.reason()));
  }

  private static String text(Outcome<Double> outcome) {
    return outcome.<String>fold(Figures::five, n -> n.reason());
  }
}
