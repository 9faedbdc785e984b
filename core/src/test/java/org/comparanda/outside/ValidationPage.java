package org.comparanda.outside;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Writes docs/validation.md from what {@link OutsideCheck} and {@link ProofRecord} left in the
 * build folder, and puts the full lists beside it. Run by {@code mvn -B verify -Pproof}.
 */
public final class ValidationPage {
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
        "Expected values come from other programs, certified sets and handbooks, never from this program. "
            + "For each check the value with the largest difference, relative to what is allowed, is shown; every value stands in [validation/](validation/), one file a check.");
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
    copyLists(checks);
  }

  private static String row(String name, List<NamedCsvRecord> rows) {
    NamedCsvRecord worst =
        rows.stream().max(Comparator.comparingDouble(ValidationPage::strain)).orElseThrow();
    return "| [%s](validation/%s.csv) | %s | %d | %s | %s | %s | %s | %s %s |"
        .formatted(
            name,
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

  private void copyLists(Map<String, List<NamedCsvRecord>> checks) throws IOException {
    Path folder = Files.createDirectories(docs.resolve("validation"));
    try (Stream<Path> old = Files.list(folder)) {
      for (Path file : old.toList()) {
        Files.delete(file);
      }
    }
    for (String name : checks.keySet()) {
      Files.copy(
          build.resolve("outside-checks").resolve(name + ".csv"),
          folder.resolve(name + ".csv"),
          StandardCopyOption.REPLACE_EXISTING);
    }
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
