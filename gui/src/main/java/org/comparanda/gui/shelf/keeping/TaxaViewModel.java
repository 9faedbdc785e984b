package org.comparanda.gui.shelf.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.exchange.csv.NameList;
import org.comparanda.exchange.table.TaxonList;
import org.comparanda.reference.Shelf;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.Names;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** The names of taxa: the tree, a file of names tried and then brought in, renaming, moving. */
public final class TaxaViewModel {
  private final KeeperRoom room;
  private final Names names;
  private final TaxonTree shipped;
  private final Signature signature;
  private final Executor work;
  private final Executor ui;
  private final Runnable afterwards;

  private final ObservableList<TaxonRow> listed = FXCollections.observableArrayList();
  private final StringProperty filter = new SimpleStringProperty("");
  private final StringProperty sentence = new SimpleStringProperty("");
  private final StringProperty target = new SimpleStringProperty("");
  private final ObjectProperty<Optional<TaxonName>> chosen =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<List<HouseTaxon>> tried = new SimpleObjectProperty<>(List.of());
  private List<TaxonRow> all = List.of();

  /**
   * The names of a house.
   *
   * @param shipped the tree that comes with the program
   * @param afterwards runs on {@code ui} after animals got another name
   */
  public TaxaViewModel(
      KeeperRoom room,
      Names names,
      TaxonTree shipped,
      Signature signature,
      Executor work,
      Executor ui,
      Runnable afterwards) {
    this.room = room;
    this.names = names;
    this.shipped = shipped;
    this.signature = signature;
    this.work = work;
    this.ui = ui;
    this.afterwards = afterwards;
    filter.addListener((o, was, is) -> list());
  }

  public ObservableList<TaxonRow> listed() {
    return listed;
  }

  public StringProperty filterProperty() {
    return filter;
  }

  public StringProperty sentenceProperty() {
    return sentence;
  }

  /** The new name, or the new parent. */
  public StringProperty targetProperty() {
    return target;
  }

  public ReadOnlyObjectProperty<Optional<TaxonName>> chosenProperty() {
    return chosen;
  }

  /** The names of a file that was tried and not brought in yet. */
  public ReadOnlyObjectProperty<List<HouseTaxon>> triedProperty() {
    return tried;
  }

  KeeperRoom room() {
    return room;
  }

  Signature signature() {
    return signature;
  }

  public void choose(Optional<TaxonName> name) {
    chosen.set(name);
  }

  /** Looks at the names again. */
  public void look() {
    work.execute(
        () -> {
          List<TaxonRow> rows = rows(names.all(), room.animals().shelf());
          ui.execute(
              () -> {
                all = rows;
                list();
              });
        });
  }

  private List<TaxonRow> rows(HouseNames house, Shelf shelf) {
    TaxonTree tree = house.on(shipped).value().orElse(shipped);
    List<TaxonRow> rows = new ArrayList<>();
    tree.taxa().stream()
        .filter(taxon -> taxon.parent().isEmpty())
        .forEach(root -> below(root, 0, tree, house, shelf, rows));
    return rows;
  }

  private static void below(
      Taxon taxon, int depth, TaxonTree tree, HouseNames house, Shelf shelf, List<TaxonRow> rows) {
    rows.add(
        new TaxonRow(
            taxon.name(),
            depth,
            taxon.author(),
            taxon.rank(),
            taxon.commonName(),
            house.synonymsOf(taxon.name()).stream()
                .map(TaxonName::value)
                .collect(Collectors.joining(", ")),
            shelf.animals().stream()
                .filter(a -> a.taxon().filter(taxon.name()::equals).isPresent())
                .count()));
    tree.taxa().stream()
        .filter(child -> child.parent().filter(taxon.name()::equals).isPresent())
        .filter(child -> house.accepted(child.name()).equals(child.name()))
        .forEach(child -> below(child, depth + 1, tree, house, shelf, rows));
  }

  private void list() {
    String wanted = filter.get().toLowerCase(Locale.ROOT);
    listed.setAll(
        all.stream()
            .filter(
                r ->
                    (r.name() + " " + r.plainName() + " " + r.synonyms() + " " + r.author())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
            .toList());
  }

  /** Reads a file of names without storing anything. */
  public void tryFile(Path file) {
    work.execute(
        () -> {
          HouseNames before = names.all();
          Outcome<List<HouseTaxon>> read =
              TaxonList.read(file)
                  .then(taxa -> before.with(taxa).on(shipped).then(tree -> Outcome.of(taxa)));
          ui.execute(
              () -> {
                tried.set(read.value().orElse(List.of()));
                sentence.set(
                    read.fold(
                        taxa -> room.words().get("taxa.try", taxa.size(), other(taxa, before)),
                        none -> room.words().said(none.reason() + " " + none.remedy())));
              });
        });
  }

  private static long other(List<HouseTaxon> taxa, HouseNames before) {
    return taxa.stream().filter(t -> !t.equals(before.byName().get(t.name()))).count();
  }

  /** Leaves the file that was tried. */
  public void leave() {
    tried.set(List.of());
    sentence.set("");
  }

  /** Brings in the names of the file that was tried. */
  public void add() {
    List<HouseTaxon> taxa = tried.get();
    withNote(
        note ->
            done(
                names.add(taxa, shipped, note),
                now -> {
                  tried.set(List.of());
                  return room.words().get("taxa.added", taxa.size());
                }));
  }

  /** Gives the chosen taxon the name that was typed. */
  public void rename() {
    withTarget(
        (name, to) ->
            note ->
                done(
                    names.rename(name, to, shipped, note),
                    animals -> room.words().get("taxa.renamed", name, to, animals)));
  }

  /** Brings the name that was typed in, under the chosen taxon. */
  public void addBelow() {
    withTarget(
        (parent, name) ->
            note ->
                done(
                    isThere(name)
                        ? Outcome.none(room.words().get("taxa.there", name), "")
                        : names.add(
                            List.of(HouseTaxon.blank(name, "").withParent(parent)), shipped, note),
                    now -> room.words().get("taxa.below", name, parent)));
  }

  private boolean isThere(TaxonName name) {
    return names.all().on(shipped).value().flatMap(tree -> tree.taxon(name)).isPresent();
  }

  /** Writes all names as a table. */
  public void save(Path file) {
    work.execute(
        () -> {
          String said = written(file, names.all().on(shipped).value().orElse(shipped));
          ui.execute(() -> sentence.set(said));
        });
  }

  private String written(Path file, TaxonTree tree) {
    try {
      Files.writeString(file, NameList.csv(tree));
      return room.words().get("taxa.saved", file.getFileName(), tree.taxa().size());
    } catch (IOException problem) {
      return room.words().get("taxa.not.saved", file.getFileName());
    }
  }

  /** Puts the chosen taxon under the parent that was typed. */
  public void move() {
    withTarget(
        (name, parent) ->
            note ->
                done(
                    names.move(name, parent, shipped, note),
                    now -> room.words().get("taxa.moved", name, parent)));
  }

  private void withTarget(
      BiFunction<TaxonName, TaxonName, java.util.function.Consumer<ChangeNote>> task) {
    if (chosen.get().isEmpty() || target.get().isBlank()) {
      sentence.set(room.words().get("taxa.none.chosen"));
      return;
    }
    withNote(task.apply(chosen.get().get(), new TaxonName(target.get().strip())));
  }

  private void withNote(java.util.function.Consumer<ChangeNote> task) {
    signature
        .note()
        .ifPresentOrElse(
            note -> work.execute(() -> task.accept(note)),
            () -> sentence.set(room.words().get("signature.missing")));
  }

  private <T> void done(Outcome<T> outcome, java.util.function.Function<T, String> said) {
    ui.execute(
        () -> {
          sentence.set(
              outcome.fold(said, none -> room.words().said(none.reason() + " " + none.remedy())));
          if (outcome.value().isPresent()) {
            signature.used();
            target.set("");
            look();
            afterwards.run();
          }
        });
  }
}
