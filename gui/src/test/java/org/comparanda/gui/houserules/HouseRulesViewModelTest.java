package org.comparanda.gui.houserules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.gui.text.Words;
import org.comparanda.house.Grant;
import org.comparanda.house.HouseRule;
import org.comparanda.house.Right;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** House Rules without a window, on a real file. */
class HouseRulesViewModelTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final Person ANN = new Person(new PersonId("ann"), "Invented Ann");
  private static final Person BEN = new Person(new PersonId("ben"), "Invented Ben");

  @TempDir Path folder;
  private Collection collection;
  private HouseRulesViewModel model;

  @BeforeEach
  void annIsKeeper() {
    collection = Collection.create(folder.resolve("c.comparanda"), CLOCK);
    List.of(ANN, BEN).forEach(collection.people()::save);
    model = model(Locale.ENGLISH);
  }

  private HouseRulesViewModel model(Locale locale) {
    HouseRulesViewModel made =
        new HouseRulesViewModel(
            new RulesRoom(
                collection.houseRules(),
                collection.grants()::rights,
                collection.people(),
                Optional.empty(),
                Words.of("houserules", locale),
                locale,
                CLOCK),
            Runnable::run,
            Runnable::run);
    made.refresh();
    return made;
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private void keeper() {
    collection
        .grants()
        .append(new Grant(0, ANN.id(), Right.KEEPER, Grant.Kind.GIVEN, ANN.id(), NOW, ""));
    model.refresh();
  }

  private RuleLine line(HouseRulesViewModel of, RuleName rule) {
    return of.lines().stream().filter(l -> l.rule() == rule).findFirst().orElseThrow();
  }

  private String set(RuleName rule, String value, String why, Person by) {
    model.sit(by);
    model.open(line(model, rule));
    model.valueProperty().set(value);
    model.whyProperty().set(why);
    model.set();
    return model.messageProperty().get();
  }

  @ParameterizedTest
  @EnumSource(RuleName.class)
  void everyRuleSaysInOneSentenceWhatItDoes(RuleName rule) {
    RuleLine english = line(model, rule);
    RuleLine german = line(model(Locale.GERMAN), rule);
    assertTrue(english.does().endsWith("."), english.does());
    assertFalse(english.does().equals(german.does()), german.does());
    assertFalse(model.said().allowed(rule).isBlank());
    assertEquals("nobody yet", english.who());
  }

  @Test
  void ruleIsSetByANamedPersonWithAReasonAndSaysSo() {
    keeper();
    assertEquals(
        "Say at the top who sits here. Nothing was changed.",
        setByNobody(RuleName.SECOND_LOOK_EVERY));
    assertEquals(
        "Say in one line why. Nothing was changed.", set(RuleName.MOST_NAMED, "4", " ", ANN));
    assertTrue(
        set(RuleName.MOST_NAMED, "4", "shorter lists", ANN)
            .startsWith("Most taxa named says from now on: 4."));
    RuleLine now = line(model, RuleName.MOST_NAMED);
    assertEquals("4", now.value());
    assertEquals("5", now.untilSet());
    assertEquals("Invented Ann", now.who());
    assertEquals(1, now.history().size());
    assertTrue(now.history().get(0).endsWith(": 4, because shorter lists"), now.history().get(0));
    assertEquals("4", collection.houseRules().now(RuleName.MOST_NAMED));
  }

  private String setByNobody(RuleName rule) {
    model.open(line(model, rule));
    model.valueProperty().set("3");
    model.whyProperty().set("more");
    model.set();
    return model.messageProperty().get();
  }

  @Test
  void whoHasNotTheRightIsRefusedAndToldWhoHas() {
    assertTrue(model.rightsProperty().get().startsWith("Nobody is keeper yet"));
    keeper();
    assertTrue(model.rightsProperty().get().contains("Invented Ann"));
    assertTrue(
        set(RuleName.PRIORS, "shelf", "as found", BEN).contains("is no keeper"),
        model.messageProperty().get());
    assertEquals("equal", collection.houseRules().now(RuleName.PRIORS));
  }

  @Test
  void valueThatIsNotAllowedIsRefusedWithWhatIs() {
    String said = set(RuleName.POOR_FIT, "7", "try", ANN);
    assertTrue(said.contains("\"7\" is not a number from 0.001 to 0.5."), said);
    assertEquals("0.05", collection.houseRules().now(RuleName.POOR_FIT));
  }

  @Test
  void numbersAreReadAndShownInThePersonsNotation() {
    HouseRulesViewModel german = model(Locale.GERMAN);
    assertEquals("0,05", line(german, RuleName.POOR_FIT).value());
    german.sit(ANN);
    german.open(line(german, RuleName.POOR_FIT));
    german.valueProperty().set("0,06");
    german.whyProperty().set("strenger");
    german.set();
    assertEquals("0.06", collection.houseRules().now(RuleName.POOR_FIT));
    german.asUntilSet();
    assertEquals("0,05", german.valueProperty().get());
    assertTrue(german.said().allowed(RuleName.POOR_FIT).startsWith("Erlaubt ist eine Zahl von"));
  }

  @Test
  void callFirstIsARuleOfTheHouse() {
    assertFalse(collection.houseRules().inForce().callFirst());
    set(RuleName.CALL_FIRST, "on", "so that nobody is led", ANN);
    assertTrue(collection.houseRules().inForce().callFirst());
    assertEquals(
        List.of("on"), collection.houseRules().all().stream().map(HouseRule::content).toList());
  }
}
