package org.comparanda.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.register.Change;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.Names;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The house's names in the collection's file. */
record SqlNames(Database database, ShelfVersions versions, DayBookRows dayBook) implements Names {
  private static final RowMapper<HouseTaxon> ROW =
      (row, context) ->
          new HouseTaxon(
              new TaxonName(row.getString("name")),
              row.getString("author"),
              row.getString("rank"),
              Optional.ofNullable(row.getString("parent")).map(TaxonName::new),
              Optional.ofNullable(row.getString("accepted_as")).map(TaxonName::new),
              row.getString("common_name"),
              row.getString("source"));

  @Override
  public HouseNames all() {
    return database.read(SqlNames::all);
  }

  private static HouseNames all(Handle h) {
    return HouseNames.of(h.createQuery("select * from house_taxon order by name").map(ROW).list());
  }

  @Override
  public Outcome<HouseNames> add(List<HouseTaxon> taxa, TaxonTree shipped, ChangeNote note) {
    return database.write(
        h -> {
          HouseNames now = all(h);
          HouseNames then = now.with(taxa);
          Outcome<TaxonTree> tree = then.on(shipped);
          tree.value()
              .ifPresent(sound -> store(h, now, then, note, taxon -> broughtIn(now, taxon)));
          return tree.then(sound -> Outcome.of(then));
        });
  }

  @Override
  public Outcome<HouseNames> move(
      TaxonName name, TaxonName parent, TaxonTree shipped, ChangeNote note) {
    return database.write(
        h -> {
          HouseNames now = all(h);
          String was =
              now.on(shipped)
                  .value()
                  .flatMap(tree -> tree.taxon(name))
                  .flatMap(taxon -> taxon.parent())
                  .map(TaxonName::value)
                  .orElse("");
          Outcome<HouseNames> moved = now.moved(name, parent, shipped);
          moved
              .value()
              .ifPresent(
                  then ->
                      store(
                          h,
                          now,
                          then,
                          note,
                          taxon -> new Change("parent", was, parent.value()).line()));
          return moved;
        });
  }

  @Override
  public Outcome<Integer> rename(TaxonName from, TaxonName to, TaxonTree shipped, ChangeNote note) {
    return database.write(
        h -> {
          HouseNames now = all(h);
          Outcome<HouseNames> renamed = now.renamed(from, to, shipped);
          return renamed.then(
              then -> {
                String what = new Change("taxon", from.value(), to.value()).line();
                store(h, now, then, note, taxon -> what);
                return Outcome.of(animals(h, from, to, note, what));
              });
        });
  }

  private int animals(Handle h, TaxonName from, TaxonName to, ChangeNote note, String what) {
    List<String> animals =
        h.createQuery("select id from animal where taxon = :from order by id")
            .bind("from", from.value())
            .mapTo(String.class)
            .list();
    h.createUpdate("update animal set taxon = :to where taxon = :from")
        .bind("from", from.value())
        .bind("to", to.value())
        .execute();
    DayBookRows book = dayBook.by(note.who());
    animals.forEach(
        id -> book.wrote(h, Kept.ANIMAL, id, "changed; " + what + "; why: " + note.why()));
    if (!animals.isEmpty()) {
      book.wrote(h, Kept.SHELF, versions.next(h, animals.size(), what), what);
    }
    return animals.size();
  }

  /** What a row says that the house did not say of the name before. */
  private static String broughtIn(HouseNames before, HouseTaxon after) {
    HouseTaxon was =
        Optional.ofNullable(before.byName().get(after.name()))
            .orElseGet(() -> HouseTaxon.blank(after.name(), ""));
    List<String> words = new ArrayList<>(List.of("brought in"));
    List.of(
            new Change("authority", was.author(), after.author()),
            new Change("rank", was.rank(), after.rank()),
            new Change("parent", text(was.parent()), text(after.parent())),
            new Change("accepted as", text(was.acceptedAs()), text(after.acceptedAs())),
            new Change("plain name", was.commonName(), after.commonName()))
        .forEach(
            change -> {
              if (!change.was().equals(change.is())) {
                words.add(change.line());
              }
            });
    return String.join("; ", words);
  }

  private static String text(Optional<TaxonName> name) {
    return name.map(TaxonName::value).orElse("");
  }

  /** Writes the rows that differ. */
  private void store(
      Handle h,
      HouseNames before,
      HouseNames after,
      ChangeNote note,
      Function<HouseTaxon, String> words) {
    SqlPeople.known(h, dayBook, note.who());
    for (HouseTaxon taxon : after.byName().values()) {
      if (!taxon.equals(before.byName().get(taxon.name()))) {
        h.createUpdate(
                "insert into house_taxon (name, author, rank, parent, accepted_as, common_name,"
                    + " source) values (:name, :author, :rank, :parent, :accepted, :common, :source)"
                    + " on conflict (name) do update set author = excluded.author,"
                    + " rank = excluded.rank, parent = excluded.parent,"
                    + " accepted_as = excluded.accepted_as, common_name = excluded.common_name,"
                    + " source = excluded.source")
            .bind("name", taxon.name().value())
            .bind("author", taxon.author())
            .bind("rank", taxon.rank())
            .bind("parent", taxon.parent().map(TaxonName::value))
            .bind("accepted", taxon.acceptedAs().map(TaxonName::value))
            .bind("common", taxon.commonName())
            .bind("source", taxon.source())
            .execute();
        dayBook
            .by(note.who())
            .wrote(
                h, Kept.TAXON, taxon.name().value(), words.apply(taxon) + "; why: " + note.why());
      }
    }
  }
}
