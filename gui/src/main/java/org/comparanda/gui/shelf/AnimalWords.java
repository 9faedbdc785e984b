package org.comparanda.gui.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.How;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.BodyMeasure;
import org.comparanda.register.Changes;
import org.comparanda.register.Restriction;
import org.comparanda.taxon.TaxonName;

/** Animals and bones in words. */
final class AnimalWords {
  private final Words words;
  private final Numbers numbers;
  private final Protocol protocol;

  AnimalWords(Words words, Locale locale, Protocol protocol) {
    this.words = words;
    this.numbers = new Numbers(locale);
    this.protocol = protocol;
  }

  /** The card, with what the register holds beside the animal. */
  AnimalCard card(Animal animal, Optional<org.comparanda.register.AnimalCard> more) {
    List<AnimalCard.Fact> facts = new ArrayList<>();
    more.filter(c -> !c.standing().onTheShelf())
        .ifPresent(c -> fact(facts, "standing", words.said(Changes.words(c.standing()))));
    fact(facts, "drawer", animal.drawer().orElse(words.get("source." + lower(animal.source()))));
    more.ifPresent(c -> fact(facts, "source", c.sourceName()));
    fact(facts, "sex", animal.sex());
    fact(facts, "age", animal.ageClass());
    fact(facts, "origin", animal.origin());
    fact(facts, "length", length(animal) + more.map(c -> taken(c.length())).orElse(""));
    fact(facts, "mass", mass(animal) + more.map(c -> taken(c.mass())).orElse(""));
    fact(facts, "flags", flags(animal.flags()));
    more.ifPresent(c -> terms(facts, c.restriction()));
    fact(facts, "remarks", animal.remarks());
    return new AnimalCard(
        animal.id().value(),
        animal.taxon().map(TaxonName::value).orElse(""),
        facts,
        animal.bones().stream().map(bone -> bone(bone, animal)).toList());
  }

  private String taken(BodyMeasure measure) {
    String kind =
        measure.kind() == BodyMeasure.Kind.NOT_KNOWN
            ? ""
            : words.get("measured." + lower(measure.kind()));
    return java.util.stream.Stream.of(
            kind, measure.how(), measure.on().map(Object::toString).orElse(""))
        .filter(part -> !part.isEmpty())
        .map(part -> ", " + part)
        .collect(Collectors.joining());
  }

  private void terms(List<AnimalCard.Fact> facts, Restriction terms) {
    fact(facts, "permit", terms.permit());
    fact(facts, "words", terms.words());
    if (terms.export() == Restriction.Export.FORBIDDEN) {
      fact(facts, "export", words.get("export.forbidden"));
    }
    fact(facts, "handover", terms.handOverBy().map(Object::toString).orElse(""));
  }

  String length(Animal animal) {
    return animal.bodyLengthMm().map(mm -> words.get("mm", numbers.fixed(mm, 0))).orElse("");
  }

  String mass(Animal animal) {
    return animal.bodyMassG().map(this::mass).orElse("");
  }

  private String mass(double g) {
    return g >= 1000
        ? words.get("kg", numbers.upTo(g / 1000, 1))
        : words.get("g", numbers.fixed(g, 0));
  }

  /** Short name of an element: what stands before the comma. */
  String heading(ElementKey key) {
    return element(key).replaceAll(",.*", "");
  }

  String element(ElementKey key) {
    return protocol.element(key).map(Element::name).orElse(key.value());
  }

  private AnimalCard.BoneLine bone(ShelfBone bone, Animal animal) {
    List<String> name = new ArrayList<>();
    name.add(element(bone.element()));
    if (bone.side() == Side.LEFT || bone.side() == Side.RIGHT) {
      name.add(words.get("side." + lower(bone.side())));
    }
    if (bone.portion() != Portion.WHOLE) {
      name.add(words.get("portion." + lower(bone.portion())));
    }
    String readings =
        bone.values().entrySet().stream()
            .map(e -> value(bone, e.getKey(), numbers.upTo(e.getValue(), 2)))
            .collect(Collectors.joining("   "));
    boolean feeds = bone.feedsFits() && animal.feedsFits();
    String flags = flags(bone.flags());
    String state = feeds ? flags : words.get("bone.kept.out", flags);
    return new AnimalCard.BoneLine(String.join(", ", name), readings, state);
  }

  private String value(ShelfBone bone, MeasurementCode code, String value) {
    boolean tape = protocol.how(bone.element(), code) == How.TAPE;
    return code + " " + value + (tape ? " " + words.get("bone.tape") : "");
  }

  String flags(Set<Flag> flags) {
    return flags.stream()
        .sorted()
        .map(f -> words.get("flag." + lower(f)))
        .collect(Collectors.joining(", "));
  }

  private void fact(List<AnimalCard.Fact> facts, String key, String text) {
    Optional.of(text)
        .filter(t -> !t.isBlank())
        .ifPresent(t -> facts.add(new AnimalCard.Fact(words.get("fact." + key), t)));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
