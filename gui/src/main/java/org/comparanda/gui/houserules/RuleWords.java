package org.comparanda.gui.houserules;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRule;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;

/** Rules in words. */
final class RuleWords {
  private static final String NUMBER = "[0-9]*\\.?[0-9]+";

  private final RulesRoom room;
  private final Words words;
  private final DateTimeFormatter times;

  RuleWords(RulesRoom room) {
    this.room = room;
    words = room.words();
    times =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withLocale(room.locale())
            .withZone(room.clock().getZone());
  }

  String get(String key, Object... places) {
    return words.get(key, places);
  }

  /** Why core refused something, and what to do. */
  String refused(String reason, String remedy) {
    return words.get("refused", words.said(reason), words.said(remedy));
  }

  String who(PersonId id) {
    return room.people().person(id).map(Person::name).filter(n -> !n.isBlank()).orElse(id.value());
  }

  /** What a rule may be set to. */
  String allowed(RuleName rule) {
    return words.get("allowed", rule.allowed(room.locale()));
  }

  RuleLine line(RuleName rule, String value, List<HouseRule> all) {
    List<HouseRule> own = new ArrayList<>(all.stream().filter(r -> r.name() == rule).toList());
    java.util.Collections.reverse(own);
    Optional<HouseRule> last = own.stream().findFirst();
    String key = key(rule);
    return new RuleLine(
        rule,
        words.get("rule." + key),
        words.get("does." + key),
        shown(rule, value),
        shown(rule, rule.untilSet()),
        words.find("unit." + key).orElse(""),
        last.map(r -> who(r.by())).orElse(words.get("set.nobody")),
        last.map(r -> times.format(r.at())).orElse(""),
        own.stream().map(this::past).toList());
  }

  private String past(HouseRule rule) {
    String said =
        words.get(
            "past", times.format(rule.at()), who(rule.by()), shown(rule.name(), rule.content()));
    return rule.why().isBlank() ? said : words.get("past.why", said, rule.why());
  }

  private String shown(RuleName rule, String content) {
    return rule == RuleName.CONTACT_CARD && content.equals(rule.untilSet())
        ? words.get("contact.none")
        : numbered(rule.said(content, room.locale()));
  }

  /** Numbers in the person's notation, all else as it is. */
  private String numbered(String content) {
    return content.matches(NUMBER) ? new Numbers(room.locale()).written(content) : content;
  }

  /** What was typed in the person's notation and words, as the house keeps it. */
  String typed(RuleName rule, String text) {
    String plain = rule.kept(text.strip(), room.locale());
    String point = plain.replace(',', '.');
    return point.matches(NUMBER) ? point : plain;
  }

  private static String key(RuleName rule) {
    return rule.name().toLowerCase(Locale.ROOT);
  }
}
