package org.comparanda.exchange.table;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.exchange.csv.HarmlessCsv;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;
import org.comparanda.taxon.TaxonTree;

/**
 * Reads tables of bones: all of a file or nothing of it, and then the report of every problem.
 *
 * <p>Form: docs/formats.md. Lengths become mm, masses g. Errors: none for anything a file may hold;
 * {@link java.util.concurrent.CancellationException} when the progress asks to stop.
 */
public final class TableReader {
  private final Protocol protocol;
  private final TaxonTree tree;
  private final TableOptions options;
  private final ReadingProgress progress;

  private TableReader(
      Protocol protocol, TaxonTree tree, TableOptions options, ReadingProgress progress) {
    this.protocol = protocol;
    this.tree = tree;
    this.options = options;
    this.progress = progress;
  }

  /** A reader that knows the words of a protocol and a taxon tree. */
  public static TableReader of(Protocol protocol, TaxonTree tree, TableOptions options) {
    return new TableReader(protocol, tree, options, ReadingProgress.unwatched());
  }

  /** The same reader, watched. */
  public TableReader watchedBy(ReadingProgress other) {
    return new TableReader(protocol, tree, options, other);
  }

  /** A shelf of its own. */
  public TableOutcome<Shelf> shelf(Path table) {
    return reading(table, Optional.empty()).shelf();
  }

  /**
   * The rows as they stand, for the integrity list: names that nobody knows, animals with two taxa
   * or a number used twice and doubtful units are no problem here, and a cell that can't be read is
   * listed.
   */
  public TableOutcome<TableEntries> entries(Path table) {
    TableOptions lenient =
        options
            .withUnknown(TableOptions.Unknown.REGISTER)
            .withUnitDoubt(TableOptions.UnitDoubt.TAKE_AS_IS);
    return new TableReading(
            table, lenient, new KnownWords(protocol, tree, Optional.empty()), progress)
        .entries();
  }

  /** Animals to be added to a collection, checked against what it holds. */
  public TableOutcome<List<AnimalCard>> cardsFor(Shelf collection, Path table) {
    return reading(table, Optional.of(collection)).cards();
  }

  /** Bones in hand, their units checked against the shelf that they will be compared with. */
  public TableOutcome<BoneTable> bones(Shelf reference, Path table) {
    return reading(table, Optional.of(reference)).bones();
  }

  /** Bones for a tray; they need not be measured. */
  public TableOutcome<BoneTable> heap(Shelf reference, Path table) {
    return reading(table, Optional.of(reference)).heap();
  }

  /**
   * The beginning of a table with a guess for each column; or why it can't be read at all.
   *
   * @param otherWords by which columns are headed, too, by what they mean
   */
  public TableOutcome<TablePreview> preview(Path table, Map<String, List<String>> otherWords) {
    KnownWords known = new KnownWords(protocol, tree, Optional.empty());
    return new TablePreviewing(table, options, known, otherWords, progress).preview();
  }

  /** Whether a text written to a table comes back as it was: blanks at its ends don't. */
  public static boolean comesBack(String text) {
    return text.isEmpty() || Cell.typed(HarmlessCsv.harmless(text)).orEmpty().equals(text);
  }

  /** Whether a code can head a column: one that is the name of a reserved column can't. */
  public static boolean headsColumn(MeasurementCode code) {
    return ReservedColumn.ofLongHeader(code.value()).isEmpty() && !code.value().contains("[");
  }

  private TableReading reading(Path table, Optional<Shelf> shelf) {
    return new TableReading(table, options, new KnownWords(protocol, tree, shelf), progress);
  }
}
