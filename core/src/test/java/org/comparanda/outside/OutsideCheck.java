package org.comparanda.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares our results with one outside source, and writes every comparison to {@code
 * target/outside-checks/NAME.csv}, from which docs/validation.md is made.
 *
 * <p>Columns: source, quantity, expected, ours, difference, allowed, kind (absolute, relative,
 * exact, or at least). A comparison is written before it is asserted, so that a failure is on
 * record, too.
 */
public final class OutsideCheck {
  private static final Path FOLDER = Path.of("target", "outside-checks");

  private final Path file;
  private final String source;

  private OutsideCheck(Path file, String source) {
    this.file = file;
    this.source = source;
  }

  /**
   * Starts the record of one source anew.
   *
   * @param name file name without ending, one for each test; small letters and hyphens
   * @param source program, version, call and file; or the publication
   */
  public static OutsideCheck named(String name, String source) {
    try {
      Files.createDirectories(FOLDER);
      Path file = FOLDER.resolve(name + ".csv");
      Files.writeString(file, "source,quantity,expected,ours,difference,allowed,kind\n");
      return new OutsideCheck(file, source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Asserts |ours − expected| ≤ allowed. */
  public void absolute(String quantity, double expected, double ours, double allowed) {
    double difference = Math.abs(ours - expected);
    write(quantity, expected, ours, difference, allowed, "absolute");
    assertTrue(difference <= allowed, () -> message(quantity, expected, ours, allowed));
  }

  /** Asserts |ours − expected| ≤ allowed · |expected|. */
  public void relative(String quantity, double expected, double ours, double allowed) {
    double difference =
        expected == ours ? 0 : Math.abs(ours - expected) / Math.max(Math.abs(expected), 1e-300);
    write(quantity, expected, ours, difference, allowed, "relative");
    assertTrue(difference <= allowed, () -> message(quantity, expected, ours, allowed));
  }

  /** Asserts ours ≥ expected − allowed; the difference is by how much ours falls short. */
  public void atLeast(String quantity, double expected, double ours, double allowed) {
    double difference = Math.max(0, expected - ours);
    write(quantity, expected, ours, difference, allowed, "at least");
    assertTrue(difference <= allowed, () -> message(quantity, expected, ours, allowed));
  }

  /** Asserts that a count or a name is the same. */
  public void exact(String quantity, Object expected, Object ours) {
    write(quantity, expected, ours, expected.equals(ours) ? 0 : 1, 0, "exact");
    assertEquals(expected, ours, () -> source + ": " + quantity);
  }

  private String message(String quantity, double expected, double ours, double allowed) {
    return "%s: %s: expected %s, ours %s, allowed %s"
        .formatted(source, quantity, expected, ours, allowed);
  }

  private void write(
      String quantity,
      Object expected,
      Object ours,
      double difference,
      double allowed,
      String kind) {
    String line =
        Stream.of(source, quantity, expected, ours, difference, allowed, kind)
            .map(cell -> quoted(cell.toString()))
            .collect(Collectors.joining(","));
    try {
      Files.write(file, List.of(line), StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String quoted(String cell) {
    return cell.matches("[^,\"\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
