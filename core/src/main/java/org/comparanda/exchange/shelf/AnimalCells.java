package org.comparanda.exchange.shelf;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.exchange.csv.BoneList;
import org.comparanda.reference.Animal;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.CardField;

/** The cells of one row that are not readings: the animal's, and those of one of its bones. */
final class AnimalCells {
  /** Fields of the card that have a column of their own beside the contract's. */
  private static final Set<CardField> CARD =
      EnumSet.range(CardField.LENGTH_ON, CardField.HAND_OVER_BY);

  static {
    CARD.remove(CardField.BODY_MASS);
  }

  private AnimalCells() {}

  static List<String> header() {
    List<String> header =
        new ArrayList<>(
            List.of(
                "animal",
                "taxon",
                "element",
                "side",
                "portion",
                "flags",
                "sex",
                "age_class",
                "origin",
                "drawer",
                "remarks",
                "body_length [mm]",
                "body_mass [g]",
                "animal_flags",
                "animal_source",
                "animal_source_name"));
    CARD.forEach(field -> header.add(field.words()));
    return header;
  }

  static List<String> of(AnimalCard card, Optional<ShelfBone> bone) {
    Animal animal = card.animal();
    List<String> cells = new ArrayList<>();
    cells.add(animal.id().value());
    cells.add(animal.taxon().map(Object::toString).orElse(""));
    cells.add(bone.map(b -> b.element().value()).orElse(""));
    cells.add(bone.map(b -> BoneList.word(b.side())).orElse(""));
    cells.add(bone.map(b -> BoneList.word(b.portion())).orElse(""));
    cells.add(
        bone.map(
                b ->
                    b.flags().stream()
                        .map(BoneList::word)
                        .sorted()
                        .collect(Collectors.joining("|")))
            .orElse(""));
    cells.addAll(List.of(animal.sex(), animal.ageClass(), animal.origin()));
    cells.add(animal.drawer().orElse(""));
    cells.add(animal.remarks());
    cells.add(animal.bodyLengthMm().map(String::valueOf).orElse(""));
    cells.add(animal.bodyMassG().map(String::valueOf).orElse(""));
    cells.add(CardField.FLAGS.text(card));
    cells.add(source(animal));
    cells.add(card.sourceName());
    CARD.forEach(field -> cells.add(unlessOrdinary(field, card)));
    return cells;
  }

  /** Only where the drawer doesn't tell it. */
  private static String source(Animal animal) {
    Source told = animal.drawer().isPresent() ? Source.OWN_DRAWER : Source.ANOTHER_HOUSE;
    return animal.source() == told ? "" : BoneList.word(animal.source());
  }

  private static String unlessOrdinary(CardField field, AnimalCard card) {
    String text = field.text(card);
    return text.equals(field.text(AnimalCard.of(card.animal()))) ? "" : text;
  }
}
