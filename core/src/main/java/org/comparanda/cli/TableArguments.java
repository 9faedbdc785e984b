package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.mapping.MappingText;
import org.comparanda.exchange.table.DecimalMark;
import org.comparanda.exchange.table.TableFacts;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.measurement.LengthUnit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How the tables named in a command are to be read. */
final class TableArguments {
  @Option(
      names = "--as",
      split = ",",
      paramLabel = "NAME=HEADER",
      description = "Read a column under another header, e.g. taxon=species,animal=id.")
  private Map<String, String> as = new LinkedHashMap<>();

  @Option(
      names = "--only",
      split = ",",
      paramLabel = "CODE",
      description = "Read these measurement columns and no others.")
  private List<String> only = new ArrayList<>();

  @Option(
      names = "--element",
      paramLabel = "E",
      description = "Element of the whole table; where it has a column element, the rows to pick.")
  private @Nullable String element;

  @Option(
      names = "--unit",
      split = ",",
      paramLabel = "UNIT",
      description = "mm, cm, m or in: for all columns that state none, or for one: GL=in.")
  private List<String> units = new ArrayList<>();

  @Option(
      names = "--decimal",
      paramLabel = "MARK",
      description = "comma or point, where the numbers don't tell.")
  private @Nullable DecimalMark decimal;

  @Option(
      names = "--leave",
      split = ",",
      paramLabel = "HEADER",
      description = "Leave these columns aside.")
  private List<String> aside = new ArrayList<>();

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet of a spreadsheet (.xlsx), where several hold something.")
  private @Nullable String sheet;

  @Option(
      names = "--header-row",
      paramLabel = "N",
      description = "The row of the header, where lines of title stand above it.")
  private @Nullable Long headerRow;

  @Option(
      names = "--shape",
      paramLabel = "SHAPE",
      description =
          "wide (a column for each measurement) or long (a row for each reading), where the header"
              + " doesn't tell.")
  private TableOptions.Shape shape = TableOptions.Shape.BY_HEADER;

  @Option(
      names = "--mapping",
      paramLabel = "NAME/FILE",
      description =
          "How such tables are read, saved before: a file, or a name in the collection. What is"
              + " said beside it counts more.")
  private @Nullable String mapping;

  @Option(
      names = "--register",
      description = "Let the table bring taxa, elements and measurements that are not known yet.")
  private boolean register;

  @Option(
      names = "--as-is",
      description = "Take the numbers as they stand, even if a column looks like another unit.")
  private boolean asIs;

  Optional<ElementKey> element() {
    return Optional.ofNullable(element).map(ElementKey::new);
  }

  List<String> only() {
    return List.copyOf(only);
  }

  /** With a mapping from a file; a name of one is of no use without a collection. */
  TableOptions options() {
    return options(name -> Optional.empty());
  }

  /** With a mapping from a file or by its name. */
  TableOptions options(Function<String, Optional<String>> named) {
    TableOptions options = saved(named);
    Map<String, String> columns = new LinkedHashMap<>(options.as());
    columns.putAll(as);
    options = options.withAs(columns);
    if (!only.isEmpty()) {
      options = options.withOnly(only);
    }
    if (element != null) {
      options = options.withElement(new ElementKey(element));
    }
    for (String unit : units) {
      int equals = unit.lastIndexOf('=');
      LengthUnit length = unit(unit.substring(equals + 1));
      options =
          equals < 0
              ? options.withUnit(length)
              : options.withUnit(unit.substring(0, equals), length);
    }
    if (decimal != null) {
      options = options.withDecimal(decimal);
    }
    if (sheet != null) {
      options = options.withSheet(sheet);
    }
    if (headerRow != null) {
      if (headerRow < 1) {
        throw new CannotDo(
            "\"" + headerRow + "\" after --header-row is no row; rows are counted from 1.");
      }
      options = options.withHeaderRow(headerRow);
    }
    if (shape != TableOptions.Shape.BY_HEADER) {
      options = options.withShape(shape);
    }
    Set<String> left = new LinkedHashSet<>(options.aside());
    left.addAll(aside);
    options = options.withAside(left);
    if (register) {
      options = options.withUnknown(TableOptions.Unknown.REGISTER);
    }
    return asIs ? options.withUnitDoubt(TableOptions.UnitDoubt.TAKE_AS_IS) : options;
  }

  private TableOptions saved(Function<String, Optional<String>> named) {
    if (mapping == null) {
      return TableOptions.withDefaults();
    }
    Path file = Path.of(mapping);
    String text;
    try {
      text =
          Files.isRegularFile(file)
              ? Files.readString(file)
              : named
                  .apply(mapping)
                  .orElseThrow(
                      () ->
                          new CannotDo(
                              "There is no mapping \""
                                  + mapping
                                  + "\", neither as a file nor in the collection. Nothing was"
                                  + " done. See shelf mappings."));
    } catch (IOException unreadable) {
      throw new CannotDo("\"" + mapping + "\" can't be read. Nothing was done.");
    }
    return MappingText.read(mapping, text)
        .fold(
            options -> options,
            none -> {
              throw CannotDo.because(none);
            });
  }

  private static LengthUnit unit(String symbol) {
    return LengthUnit.ofSymbol(symbol)
        .orElseThrow(
            () ->
                new CannotDo("\"" + symbol + "\" after --unit is no unit. Write mm, cm, m or in."));
  }

  /** A header named by --as must be found in one of the tables. */
  void everyMappingFound(List<TableFacts> tables) {
    Set<String> found = new LinkedHashSet<>();
    tables.forEach(t -> found.addAll(t.mapped()));
    as.forEach(
        (role, header) -> {
          if (!found.contains(role)) {
            throw new CannotDo(
                "No table has the header \""
                    + header
                    + "\" that --as "
                    + role
                    + "="
                    + header
                    + " names. Nothing was done. Look at the header row and correct the name.");
          }
        });
  }
}
