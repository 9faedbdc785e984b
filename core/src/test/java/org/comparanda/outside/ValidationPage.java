package org.comparanda.outside;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes docs/validation.md from what {@link OutsideCheck} and {@link ProofRecord} left in the
 * build folder, and beside it validation-largest.csv, the ten largest differences of each check.
 * The full lists stay in the build folder. Run by {@code mvn -B verify -Pproof}.
 */
public final class ValidationPage {
  private static final int LARGEST = 10;
  private static final String LIST = "validation-largest.csv";

  private final Path build;
  private final Path docs;
  private final LocalDate date;

  private ValidationPage(Path build, Path docs, LocalDate date) {
    this.build = build;
    this.docs = docs;
    this.date = date;
  }

  /** Arguments: the build folder of core, the docs folder. */
  public static void main(String[] args) throws IOException {
    new ValidationPage(Path.of(args[0]), Path.of(args[1]), LocalDate.now(Clock.systemUTC()))
        .write();
  }

  private void write() throws IOException {
    Map<String, List<NamedCsvRecord>> checks = read(build.resolve("outside-checks"));
    if (checks.isEmpty()) {
      throw new IOException("No outside check was recorded: run the tests first.");
    }
    long values = checks.values().stream().mapToLong(List::size).sum();
    List<String> page = new ArrayList<>();
    page.add("# Validation");
    page.add("");
    page.add(
        "Made on %s from the records that the tests leave in the build folder: %d values from %d outside checks. `mvn -B verify -Pproof` makes it anew, with the long proofs in full size."
            .formatted(date, values, checks.size()));
    page.add(
        ("Expected values come from other programs, certified sets and handbooks, never from this"
                + " program. For each check the value with the largest difference, relative to what is"
                + " allowed, is shown; the %d largest of each check stand in [%s](%s), every value in"
                + " `core/target/outside-checks/` after the tests, one file a check.")
            .formatted(LARGEST, LIST, LIST));
    page.add("");
    page.add(
        "| check | source | values | worst: quantity | expected | ours | difference | allowed |");
    page.add("|---|---|---|---|---|---|---|---|");
    checks.forEach((name, rows) -> page.add(row(name, rows)));
    page.add("");
    page.add("## Long proofs");
    page.add("");
    page.add("| proof | size | seed | result |");
    page.add("|---|---|---|---|");
    read(build.resolve("proofs")).values().stream()
        .flatMap(List::stream)
        .forEach(
            r ->
                page.add(
                    "| %s | %s | %s | %s |"
                        .formatted(
                            r.getField("proof"),
                            r.getField("size"),
                            r.getField("seed"),
                            r.getField("result"))));
    Files.write(docs.resolve("validation.md"), page);
    Files.write(docs.resolve(LIST), largest(checks));
  }

  private static String row(String name, List<NamedCsvRecord> rows) {
    NamedCsvRecord worst =
        rows.stream().max(Comparator.comparingDouble(ValidationPage::strain)).orElseThrow();
    return "| %s | %s | %d | %s | %s | %s | %s | %s %s |"
        .formatted(
            name,
            cell(worst.getField("source")),
            rows.size(),
            cell(worst.getField("quantity")),
            worst.getField("expected"),
            worst.getField("ours"),
            shortened(worst.getField("difference")),
            shortened(worst.getField("allowed")),
            worst.getField("kind"));
  }

  private static double strain(NamedCsvRecord row) {
    double allowed = Double.parseDouble(row.getField("allowed"));
    double difference = Double.parseDouble(row.getField("difference"));
    return allowed == 0 ? difference : difference / allowed;
  }

  private static String shortened(String number) {
    return String.format(Locale.ROOT, "%.2g", Double.parseDouble(number));
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  private static List<String> largest(Map<String, List<NamedCsvRecord>> checks) {
    List<String> lines = new ArrayList<>();
    lines.add("check,values,source,quantity,expected,ours,difference,allowed,kind");
    checks.forEach(
        (name, rows) ->
            rows.stream()
                .sorted(Comparator.comparingDouble(ValidationPage::strain).reversed())
                .limit(LARGEST)
                .map(row -> name + "," + rows.size() + "," + line(row))
                .forEach(lines::add));
    return lines;
  }

  private static String line(NamedCsvRecord row) {
    return row.getFields().stream()
        .map(field -> field.matches("[^\",\\n]*") ? field : '"' + field.replace("\"", "\"\"") + '"')
        .collect(Collectors.joining(","));
  }

  private static Map<String, List<NamedCsvRecord>> read(Path folder) throws IOException {
    Map<String, List<NamedCsvRecord>> lists = new TreeMap<>();
    if (!Files.isDirectory(folder)) {
      return lists;
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
          List<NamedCsvRecord> rows = reader.stream().toList();
          if (!rows.isEmpty()) {
            lists.put(file.getFileName().toString().replaceFirst("\\.csv$", ""), rows);
          }
        }
      }
    }
    return lists;
  }
}
