package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.CardField;
import org.comparanda.taxon.TaxonName;

/** Puts the rows that share a catalogue number together into animals. */
final class AnimalAssembly {
  private final TableOptions options;
  private final Map<AnimalId, Animal> collection = new HashMap<>();
  private final ProblemList problems;
  private final Map<String, List<BoneRow>> rowsOf = new LinkedHashMap<>();

  AnimalAssembly(TableOptions options, Optional<Shelf> collection, ProblemList problems) {
    this.options = options;
    collection.ifPresent(shelf -> shelf.animals().forEach(a -> this.collection.put(a.id(), a)));
    this.problems = problems;
  }

  void add(BoneRow row) {
    String id = row.animal().isEmpty() ? "row " + row.number() : row.animal();
    List<BoneRow> before = rowsOf.computeIfAbsent(id, i -> new ArrayList<>());
    before.stream()
        .filter(b -> b.taxon().isPresent())
        .findFirst()
        .ifPresent(first -> sameTaxon(id, first, row));
    before.add(row);
  }

  private void sameTaxon(String id, BoneRow first, BoneRow row) {
    if (row.taxon().isPresent() && !row.taxon().equals(first.taxon())) {
      twoTaxa(id, row, first.taxon().orElseThrow() + " in row " + first.number());
    }
  }

  private void twoTaxa(String id, BoneRow row, String other) {
    problems.cell(
        row.number(),
        "taxon",
        row.taxon().map(TaxonName::value).orElse(""),
        "one animal has two taxa: " + id + " is " + other,
        "Look at the catalogue card and correct the taxon or the animal's number.");
  }

  /** The animals in the order of the table. */
  List<AnimalCard> cards() {
    List<AnimalCard> animals = new ArrayList<>();
    var left = rowsOf.entrySet().iterator();
    while (left.hasNext()) { // each animal's rows are let go, so that never both are kept whole
      var entry = left.next();
      animals.add(card(animal(new AnimalId(entry.getKey()), entry.getValue()), entry.getValue()));
      left.remove();
    }
    return animals;
  }

  /** What the rows say of the animal beside what fits see. */
  private AnimalCard card(Animal animal, List<BoneRow> rows) {
    Map<CardField, BoneRow> said = new EnumMap<>(CardField.class);
    for (BoneRow row : rows) {
      row.card()
          .forEach(
              (field, text) -> {
                BoneRow first = said.putIfAbsent(field, row);
                if (first != null && !text.equals(first.card().get(field))) {
                  problems.cell(
                      row.number(),
                      field.words(),
                      text,
                      "the animal " + animal.id() + " has another entry in row " + first.number(),
                      "Look at the catalogue card and keep one.");
                }
              });
    }
    AnimalCard card = AnimalCard.of(animal);
    for (Map.Entry<CardField, BoneRow> each : said.entrySet()) {
      AnimalCard here = card;
      String text = each.getValue().card().getOrDefault(each.getKey(), "");
      card =
          each.getKey()
              .write(here, text)
              .fold(
                  written -> written,
                  none -> {
                    problems.cell(
                        each.getValue().number(),
                        each.getKey().words(),
                        text,
                        none.reason().replaceFirst("\\.$", ""),
                        none.remedy());
                    return here;
                  });
    }
    return card;
  }

  private Animal animal(AnimalId id, List<BoneRow> rows) {
    Optional<TaxonName> taxon = rows.stream().flatMap(r -> r.taxon().stream()).findFirst();
    if (taxon.isEmpty() && options.taxa() == TableOptions.Taxa.NEEDED) {
      problems.column(
          rows.get(0).number(),
          "taxon",
          "the animal " + id + " has no taxon",
          "Fill the cell; only size lines can do without.");
    }
    Optional.ofNullable(collection.get(id)).ifPresent(known -> alreadyThere(known, rows));
    Optional<String> drawer = first(rows, BoneRow::drawer);
    return new Animal(
        id,
        taxon,
        drawer.isPresent() ? Source.OWN_DRAWER : Source.ANOTHER_HOUSE,
        drawer,
        first(rows, BoneRow::sex).orElse(""),
        first(rows, BoneRow::ageClass).orElse(""),
        first(rows, BoneRow::origin).orElse(""),
        body(id, rows, "body_length", BoneRow::bodyLengthMm),
        body(id, rows, "body_mass", BoneRow::bodyMassG),
        Set.of(),
        remarks(rows),
        rows.stream().filter(r -> !r.boneless()).map(AnimalAssembly::bone).toList());
  }

  private void alreadyThere(Animal known, List<BoneRow> rows) {
    BoneRow row = rows.get(0);
    if (row.taxon().isPresent()
        && known.taxon().isPresent()
        && !row.taxon().equals(known.taxon())) {
      twoTaxa(known.id().value(), row, known.taxon().get() + " in the collection");
    }
    problems.cell(
        row.number(),
        "animal",
        known.id().value(),
        "this animal is already in the collection",
        "Take its rows out of the table, or give the animal a number of its own.");
  }

  /** One text of an animal, taken from its rows. */
  private interface Text {
    String of(BoneRow row);
  }

  /** One number of an animal, taken from its rows. */
  private interface Size {
    Optional<Double> of(BoneRow row);
  }

  private static Optional<String> first(List<BoneRow> rows, Text text) {
    return rows.stream().map(text::of).filter(t -> !t.isEmpty()).findFirst();
  }

  private Optional<Double> body(AnimalId id, List<BoneRow> rows, String column, Size size) {
    Optional<Double> first = Optional.empty();
    for (BoneRow row : rows) {
      Optional<Double> here = size.of(row);
      if (first.isPresent() && here.isPresent() && !first.equals(here)) {
        problems.cell(
            row.number(),
            column,
            String.valueOf(here.get()),
            "the animal " + id + " has another " + column + " further up: " + first.get(),
            "Look at the catalogue card and keep one.");
      }
      first = first.or(() -> here);
    }
    return first;
  }

  /** Every remark once; one that another row repeats and goes on from is not said twice. */
  private static String remarks(List<BoneRow> rows) {
    Set<String> remarks = new LinkedHashSet<>();
    rows.stream().map(BoneRow::remarks).filter(r -> !r.isEmpty()).forEach(remarks::add);
    return remarks.stream()
        .filter(r -> remarks.stream().noneMatch(other -> other.startsWith(r + "; ")))
        .collect(Collectors.joining("; "));
  }

  private static ShelfBone bone(BoneRow row) {
    return new ShelfBone(row.element(), row.side(), row.portion(), row.flags(), row.values());
  }
}
