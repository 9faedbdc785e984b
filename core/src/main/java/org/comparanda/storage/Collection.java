package org.comparanda.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.DoubleConsumer;
import org.comparanda.capture.CaliperCards;
import org.comparanda.capture.Drafts;
import org.comparanda.check.AcceptedFindings;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookPages;
import org.comparanda.daybook.Verdict;
import org.comparanda.house.Grants;
import org.comparanda.house.HouseRules;
import org.comparanda.measurement.People;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.oldcards.OldCards;
import org.comparanda.photo.Photos;
import org.comparanda.pile.Pile;
import org.comparanda.reference.ImportedTables;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.TableMappings;
import org.comparanda.register.Names;
import org.comparanda.register.Register;
import org.comparanda.register.Skeletons;
import org.comparanda.register.TableIntake;
import org.comparanda.secondlook.Draws;
import org.comparanda.tray.Associations;
import org.comparanda.tray.KeptAnswers;
import org.comparanda.tray.Keying;
import org.comparanda.tray.Lots;
import org.comparanda.tray.Numbering;
import org.comparanda.tray.OtherNames;
import org.comparanda.tray.Refits;
import org.comparanda.tray.Scraps;
import org.comparanda.tray.Search;
import org.comparanda.tray.Stops;
import org.comparanda.tray.Trays;

/**
 * One collection: its file and the repositories in it. Every change is on the disk when the call
 * that made it returns.
 *
 * <p>Errors of every method: {@link CollectionProblem} if the file is locked, full or damaged;
 * {@link IllegalStateException} after {@link #close}.
 */
public final class Collection implements AutoCloseable {
  /** How the name of a collection's file ends. */
  public static final String ENDING = ".comparanda";

  private static final String FIRST_BENCH = "bench 1";

  private final Path file;
  private final Database database;
  private final Clock clock;
  private final DayBookRows dayBook;

  private Collection(Path file, Clock clock, Database database, DayBookRows dayBook) {
    this.file = file;
    this.clock = clock;
    this.database = database;
    this.dayBook = dayBook;
  }

  /**
   * Opens a collection; an older form is brought up to date.
   *
   * <p>Errors: {@link CollectionProblem} if the file is missing, not ours, newer than this program,
   * locked or damaged; the file then stays as it was.
   */
  public static Collection open(Path file, Clock clock) {
    Path place = file.toAbsolutePath();
    DayBookRows dayBook = new DayBookRows(FIRST_BENCH, clock, Optional.empty());
    return new Collection(place, clock, CollectionFile.opened(place, dayBook), dayBook);
  }

  /**
   * Makes an empty collection, with its folder. It is made under another name and then renamed, so
   * that a half-made one never stands there.
   *
   * <p>Errors: {@link CollectionProblem} if something stands there already, the name does not end
   * in {@link #ENDING} or the folder can't be written.
   */
  public static Collection create(Path file, Clock clock) {
    CollectionFile.made(file);
    return open(file, clock);
  }

  /** Opens the collection if the file is there, otherwise makes it. */
  public static Collection openOrCreate(Path file, Clock clock) {
    return Files.exists(file) ? open(file, clock) : create(file, clock);
  }

  /** The file, with its folder. */
  public Path file() {
    return file;
  }

  /** What to tell the person about the place of the file (a network drive); mostly empty. */
  public Optional<String> caution() {
    try {
      return NetworkDrive.caution(file);
    } catch (IOException problem) {
      throw CollectionProblem.notReadable(file);
    }
  }

  /**
   * The same open collection, whose changes go into the Day Book under another bench's name;
   * without it they stand under "bench 1".
   */
  public Collection atBench(String bench) {
    if (bench.isBlank() || bench.equals(DayBook.JOINING) || bench.contains("\n")) {
      throw new IllegalArgumentException("\"" + bench + "\" can't be the name of a bench.");
    }
    return new Collection(file, clock, database, new DayBookRows(bench, clock, dayBook.by()));
  }

  /** The same open collection, whose changes stand in the Day Book as this person's. */
  public Collection by(PersonId person) {
    return new Collection(
        file, clock, database, new DayBookRows(dayBook.bench(), clock, Optional.of(person)));
  }

  /** The comparative animals. */
  public ReferenceAnimals animals() {
    return new SqlReferenceAnimals(database, new ShelfVersions(clock), dayBook);
  }

  /** The animals' cards, and every change of them. */
  public Register register() {
    return cards();
  }

  private SqlRegister cards() {
    return new SqlRegister(database, new ShelfVersions(clock), dayBook);
  }

  /** The house's own names of taxa. */
  public Names names() {
    return new SqlNames(database, new ShelfVersions(clock), dayBook);
  }

  /** The readings of the bones in hand. */
  public ReadingLog readings() {
    return new SqlReadingLog(database, dayBook);
  }

  /** Trays, their bones and the calls. */
  public Trays trays() {
    return new SqlTrays(database, dayBook);
  }

  /** What the numbers said of bones, kept to be reckoned again. */
  public KeptAnswers keptAnswers() {
    return new SqlKeptAnswers(database);
  }

  /** Lots and how sensitive their places are. */
  public Lots lots() {
    return new SqlLots(database, dayBook);
  }

  /** Pieces that nobody will name. */
  public Scraps scraps() {
    return new SqlScraps(database, dayBook);
  }

  /** Bones set aside as possibly human. */
  public Stops stops() {
    return new SqlStops(database, cards(), dayBook);
  }

  /** Who may do what. */
  public Grants grants() {
    return new SqlGrants(database, dayBook);
  }

  /** Rules of the house. */
  public HouseRules houseRules() {
    return new SqlHouseRules(database, dayBook);
  }

  /** What the Second Look decided. */
  public Draws draws() {
    return new SqlDraws(database, dayBook);
  }

  /** Everything in one field, also under its other names. */
  public Search search(OtherNames names) {
    return new SqlSearch(database, names);
  }

  /** Names of those who measure and call. */
  public People people() {
    return new SqlPeople(database, dayBook);
  }

  /** Pictures of bones and animals. */
  public Photos photos() {
    return new SqlPhotos(database, dayBook, clock, new PhotoFolder(file));
  }

  /** Bone numbers by the trays' rules. */
  public Numbering numbering() {
    return new SqlNumbering(database, dayBook, clock);
  }

  /** Bones found together. */
  public Associations associations() {
    return new SqlAssociations(database, dayBook);
  }

  /** Bones in pieces. */
  public Refits refits() {
    return new SqlRefits(database, dayBook);
  }

  /** What each bench is about beyond the bone in hand. */
  public Keying keying() {
    return new SqlKeying(database);
  }

  /** Bones of skeletons that are measured on the Shelf. */
  public Skeletons skeletons() {
    return new SqlSkeletons(database, dayBook);
  }

  /** What lies open on each bench. */
  public Drafts drafts() {
    return new SqlDrafts(database);
  }

  /** Findings of the integrity list that were accepted with a reason. */
  public AcceptedFindings acceptedFindings() {
    return new SqlAcceptedFindings(database, dayBook);
  }

  /** Lines of legacy lists, kept as found. */
  public OldCards oldCards() {
    return new SqlOldCards(database, dayBook);
  }

  /** What came in to become a comparative skeleton. */
  public Pile pile() {
    return new SqlPile(database, dayBook);
  }

  /** How tables are read, under names. */
  public TableMappings mappings() {
    return new SqlTableMappings(database, dayBook);
  }

  /** The tables whose animals came onto the shelf. */
  public ImportedTables importedTables() {
    return new SqlImportedTables(database);
  }

  /** Brings whole tables of animals in. */
  public TableIntake tableIntake() {
    return tableIntake(AsideFile.CHUNK);
  }

  /** The same, so many animals set down at a time. */
  TableIntake tableIntake(int chunk) {
    return new SqlTableIntake(database, file, cards(), dayBook, clock, chunk);
  }

  /** The calipers of the room. */
  public CaliperCards caliperCards() {
    return new SqlCaliperCards(database, dayBook);
  }

  /** The head hash of the Day Book, for slips, backups and exports; it fixes all before it. */
  public String dayBookHead() {
    return database.write(dayBook::head);
  }

  /** The Day Book itself, to be read. */
  public DayBook dayBook() {
    return database.read(DayBookRows::read);
  }

  /** The Day Book page by page. */
  public DayBookPages dayBookPages() {
    return new SqlDayBookPages(database);
  }

  /** Whether the Day Book holds up to a head that it gave, and every row is as it was written. */
  public Verdict verifyDayBook(String head) {
    return verifyDayBook(Optional.of(head), part -> {});
  }

  /** The same without a head: a tail cut off or a book rebuilt whole can't be told so. */
  public Verdict verifyDayBook() {
    return verifyDayBook(Optional.empty(), part -> {});
  }

  /**
   * The same with or without a head.
   *
   * @param done is told now and then which part of the work is done, 0 to 1
   */
  public Verdict verifyDayBook(Optional<String> head, DoubleConsumer done) {
    return database.read(h -> DayBookCheck.verify(h, head, done));
  }

  /** Grows by one with every change of the shelf; 0 for an empty one. */
  public long shelfVersion() {
    return database.read(ShelfVersions::now);
  }

  /** Gives every row of every table: its table's name, then its columns. */
  public void eachRow(BiConsumer<String, Map<String, Object>> taker) {
    database.read(
        h -> {
          RowCopy.out(h, taker);
          return file;
        });
  }

  /** Gives rows one after the other. */
  public interface Filling {
    /** Gives all rows. Errors: {@link IOException} if they can't be read. */
    void rows(BiConsumer<String, Map<String, Object>> taker) throws IOException;
  }

  /**
   * Makes a collection from rows as {@link #eachRow} gives them, all of them or none.
   *
   * <p>Errors: those of {@link #create}; {@link CollectionProblem} if the rows are not of this form
   * or do not give that content hash; {@link IOException} if they can't be read. Nothing then
   * stands there.
   */
  public static Collection rebuild(Path file, Clock clock, String contentHash, Filling filling)
      throws IOException {
    Collection made = create(file, clock);
    boolean whole = false;
    try {
      RowCopy.in(made.database, filling);
      if (!made.contentHash().equals(contentHash)) {
        throw CollectionProblem.copyDiffers(file);
      }
      whole = true;
      return made;
    } finally {
      if (!whole) {
        made.close();
        Files.deleteIfExists(made.file);
      }
    }
  }

  /**
   * Writes a whole copy of the file, looked through before it stands there.
   *
   * <p>Errors: {@link CollectionProblem} if something stands there already, the folder can't be
   * written or the copy is not equal.
   */
  public void backUp(Path place) {
    CollectionFile.copied(database, file, place, clock);
  }

  /** Copies the pictures beside this collection to their place beside another file. */
  public PhotoCopies copyPhotosBeside(Path other) {
    return new PhotoFolder(file).copyTo(new PhotoFolder(other), photos().all());
  }

  /** Takes this collection's pictures from their place beside another file. */
  public PhotoCopies takePhotosBeside(Path other) {
    return new PhotoFolder(other).copyTo(new PhotoFolder(file), photos().all());
  }

  /** SHA-256 over all rows, in hexadecimal: equal for equal content, whatever the file's layout. */
  public String contentHash() {
    return database.read(ContentHash::of);
  }

  /** Writes the log back into the file and lets go of it. Closing twice does nothing more. */
  @Override
  public void close() {
    database.close();
  }
}
