package org.comparanda.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/** The strip of a bone's history in two languages; its lines are invented. */
class CallWordsTest {
  private static final BoneId BONE = new BoneId("K-1");
  private static final PersonId ANN = new PersonId("ann");
  private static final Instant NINE = Instant.parse("2026-11-25T09:00:00Z");
  private static final Call CALL =
      new Call(1204, BONE, new TaxonName("Ovis aries"), Qualifier.CF, ANN, NINE, "groove", false)
          .withGrounds(
              Grounds.notSaid()
                  .withHow(Grounds.How.BY_EYE)
                  .withComparedWith(List.of(new AnimalId("HB-1")))
                  .withTraits(List.of(new TraitAnswer("bump", TraitAnswer.Seen.CANT_SEE)))
                  .withWhy("it''s weak {0}"));
  private static final ElementCall TIBIA =
      new ElementCall(
          1,
          BONE,
          new ElementKey("tibia"),
          Side.LEFT,
          Portion.DISTAL,
          ANN,
          NINE.plusSeconds(60),
          "",
          Optional.of(1204L));
  private static final Stop STOP =
      new Stop(1, BONE, Stop.Kind.SET_ASIDE, ANN, NINE.plusSeconds(120), "too thin");

  private static List<String> strip(Locale language) {
    return BoneEvent.strip(List.of(CALL), List.of(TIBIA), List.of(STOP), CallWords.in(language))
        .stream()
        .map(BoneEvent::words)
        .toList();
  }

  @Test
  void historyIsToldInEnglish() {
    assertEquals(
        List.of(
            "call 1204, called: Ovis cf. aries (groove; by eye; compared with HB-1; bump cant see;"
                + " why: it''s weak {0}); suggestion not seen; holds",
            "element in the second look 1204: left tibia, distal",
            "set aside as possibly human: too thin"),
        strip(Locale.ENGLISH));
  }

  @Test
  void historyIsToldInGerman() {
    assertEquals(
        List.of(
            "Bestimmung 1204, bestimmt: Ovis cf. aries (groove; mit bloßem Auge; verglichen mit"
                + " HB-1; bump nicht zu sehen; Grund: it''s weak {0}); Vorschlag nicht gesehen;"
                + " gilt",
            "Element im zweiten Blick 1204: Schienbein links, unteres Ende",
            "als vielleicht menschlich beiseitegelegt: too thin"),
        strip(Locale.GERMANY));
  }

  @Test
  void germanSaysEverythingWithTheSamePlaces() throws IOException {
    Properties english = file("phrases.properties");
    Properties german = file("phrases_de.properties");
    assertEquals(
        new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
    for (String key : english.stringPropertyNames()) {
      assertEquals(places(english.getProperty(key)), places(german.getProperty(key)), key);
    }
  }

  private static Set<String> places(String text) {
    return Pattern.compile("\\{\\d")
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Properties file(String name) throws IOException {
    Properties properties = new Properties();
    try (var in = CallWords.class.getResourceAsStream(name)) {
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return properties;
  }
}
