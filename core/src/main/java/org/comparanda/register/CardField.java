package org.comparanda.register;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.bone.Flag;
import org.comparanda.reference.Source;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * One field of an animal's card: how it reads as text, and what a text makes of the card. An empty
 * text empties the field. The words are those of a table's columns where a table has the column.
 */
@SuppressWarnings("ImmutableEnumChecker") // its functions hold no state
public enum CardField {
  TAXON(
      "taxon",
      c -> c.animal().taxon().map(TaxonName::value).orElse(""),
      (c, text) ->
          sound(
              c.withAnimal(
                  c.animal()
                      .withTaxon(Optional.of(text).filter(CardField::some).map(TaxonName::new))))),
  SOURCE(
      "source",
      c -> word(c.animal().source()),
      (c, text) ->
          oneOf(text, Source.values()).then(s -> sound(c.withAnimal(c.animal().withSource(s))))),
  SOURCE_NAME("source_name", AnimalCard::sourceName, (c, text) -> sound(c.withSourceName(text))),
  DRAWER(
      "drawer",
      c -> c.animal().drawer().orElse(""),
      (c, text) ->
          sound(c.withAnimal(c.animal().withDrawer(Optional.of(text).filter(CardField::some))))),
  SEX("sex", c -> c.animal().sex(), (c, text) -> sound(c.withAnimal(c.animal().withSex(text)))),
  AGE_CLASS(
      "age_class",
      c -> c.animal().ageClass(),
      (c, text) -> sound(c.withAnimal(c.animal().withAgeClass(text)))),
  ORIGIN(
      "origin",
      c -> c.animal().origin(),
      (c, text) ->
          Set.of("", "wild", "captive").contains(text)
              ? sound(c.withAnimal(c.animal().withOrigin(text)))
              : Outcome.none("is neither wild nor captive.", "Leave it empty when not known.")),
  FLAGS(
      "flags",
      c ->
          c.animal().flags().stream()
              .map(CardField::word)
              .sorted()
              .collect(Collectors.joining("|")),
      (c, text) -> flags(text).then(f -> sound(c.withAnimal(c.animal().withFlags(f))))),
  BODY_LENGTH(
      "body_length",
      c -> c.animal().bodyLengthMm().map(mm -> PlainNumber.text(mm) + " mm").orElse(""),
      (c, text) ->
          Amount.LENGTH
              .read(text)
              .then(mm -> sound(c.withAnimal(c.animal().withBodyLengthMm(mm))))),
  LENGTH_ON(
      "body_length_on",
      c -> day(c.length().on()),
      (c, text) -> day(text).then(d -> sound(c.withLength(c.length().withOn(d))))),
  LENGTH_HOW(
      "body_length_how",
      c -> c.length().how(),
      (c, text) -> sound(c.withLength(c.length().withHow(text)))),
  LENGTH_KIND(
      "body_length_kind",
      c -> word(c.length().kind()),
      (c, text) -> kind(text).then(k -> sound(c.withLength(c.length().withKind(k))))),
  BODY_MASS(
      "body_mass",
      c -> c.animal().bodyMassG().map(g -> PlainNumber.text(g) + " g").orElse(""),
      (c, text) ->
          Amount.MASS.read(text).then(g -> sound(c.withAnimal(c.animal().withBodyMassG(g))))),
  MASS_ON(
      "body_mass_on",
      c -> day(c.mass().on()),
      (c, text) -> day(text).then(d -> sound(c.withMass(c.mass().withOn(d))))),
  MASS_HOW(
      "body_mass_how", c -> c.mass().how(), (c, text) -> sound(c.withMass(c.mass().withHow(text)))),
  MASS_KIND(
      "body_mass_kind",
      c -> word(c.mass().kind()),
      (c, text) -> kind(text).then(k -> sound(c.withMass(c.mass().withKind(k))))),
  PERMIT(
      "permit",
      c -> c.restriction().permit(),
      (c, text) -> sound(c.withRestriction(c.restriction().withPermit(text)))),
  PERMIT_WORDS(
      "permit_words",
      c -> c.restriction().words(),
      (c, text) -> sound(c.withRestriction(c.restriction().withWords(text)))),
  EXPORT(
      "export",
      c -> word(c.restriction().export()),
      (c, text) ->
          oneOf(text.isEmpty() ? "allowed" : text, Restriction.Export.values())
              .then(e -> sound(c.withRestriction(c.restriction().withExport(e))))),
  HAND_OVER_BY(
      "hand_over_by",
      c -> day(c.restriction().handOverBy()),
      (c, text) ->
          day(text).then(d -> sound(c.withRestriction(c.restriction().withHandOverBy(d))))),
  REMARKS(
      "remarks",
      c -> c.animal().remarks(),
      (c, text) -> sound(c.withAnimal(c.animal().withRemarks(text))));

  private final String words;
  private final Function<AnimalCard, String> reader;
  private final BiFunction<AnimalCard, String, Outcome<AnimalCard>> writer;

  CardField(
      String words,
      Function<AnimalCard, String> reader,
      BiFunction<AnimalCard, String, Outcome<AnimalCard>> writer) {
    this.words = words;
    this.reader = reader;
    this.writer = writer;
  }

  /** As a command and the Day Book name it. */
  public String words() {
    return words;
  }

  /** The field with those words. */
  public static Optional<CardField> ofWords(String words) {
    return Arrays.stream(values()).filter(f -> f.words.equals(words)).findFirst();
  }

  /** What the card says there, as it would be typed. */
  public String text(AnimalCard card) {
    return reader.apply(card);
  }

  /** The card with that text there; none says what is wrong with the text. */
  public Outcome<AnimalCard> write(AnimalCard card, String text) {
    return writer.apply(card, text.strip());
  }

  private static Outcome<AnimalCard> sound(AnimalCard card) {
    return Outcome.of(card);
  }

  private static boolean some(String text) {
    return !text.isEmpty();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <E extends Enum<E>> Outcome<E> oneOf(String text, E[] values) {
    String asked = text.toLowerCase(Locale.ROOT).replace('_', ' ');
    return Arrays.stream(values)
        .filter(v -> word(v).equals(asked))
        .findFirst()
        .map(Outcome::of)
        .orElseGet(
            () ->
                Outcome.none(
                    "is not a word for it.",
                    "Write one of: "
                        + Arrays.stream(values)
                            .map(CardField::word)
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  private static Outcome<BodyMeasure.Kind> kind(String text) {
    return oneOf(text.isEmpty() ? "not known" : text, BodyMeasure.Kind.values());
  }

  private static Outcome<Set<Flag>> flags(String text) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    for (String word : text.split("[|,]", -1)) {
      if (!word.isBlank()) {
        Outcome<Flag> flag = oneOf(word.strip(), Flag.values());
        if (flag.value().isEmpty()) {
          return flag.then(f -> Outcome.of(flags));
        }
        flag.value().ifPresent(flags::add);
      }
    }
    return Outcome.of(flags);
  }

  private static String day(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse("");
  }

  private static Outcome<Optional<LocalDate>> day(String text) {
    if (text.isEmpty()) {
      return Outcome.of(Optional.empty());
    }
    try {
      return Outcome.of(Optional.of(LocalDate.parse(text)));
    } catch (DateTimeParseException unreadable) {
      return Outcome.none("is no day.", "Write year, month, day: 2026-11-25.");
    }
  }
}
