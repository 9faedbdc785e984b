package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.house.HouseRule;
import org.comparanda.house.HouseRules;
import org.comparanda.house.Right;
import org.comparanda.house.RuleName;
import org.comparanda.house.RulesInForce;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Rules of the house in the collection's file. */
record SqlHouseRules(Database database, DayBookRows dayBook) implements HouseRules {
  @Override
  public String now(RuleName name) {
    return database.read(h -> now(h, name));
  }

  static String now(Handle h, RuleName name) {
    return h.createQuery("select content from house_rule where name = :name order by id desc")
        .bind("name", name.name())
        .mapTo(String.class)
        .findFirst()
        .orElse(name.untilSet());
  }

  @Override
  public List<HouseRule> all() {
    return database.read(
        h -> h.createQuery("select * from house_rule order by id").map(SqlHouseRules::rule).list());
  }

  @Override
  public RulesInForce inForce() {
    return database.read(SqlHouseRules::inForce);
  }

  @Override
  public Outcome<HouseRule> set(HouseRule rule) {
    return database.write(
        h -> {
          Set<PersonId> keepers = SqlGrants.rights(h).holders(Right.KEEPER);
          if (!keepers.isEmpty() && !keepers.contains(rule.by())) {
            return Outcome.none(
                "\"" + rule.by().value() + "\" is no keeper. The rule stays as it was.",
                "Ask a keeper to set it.");
          }
          Outcome<RulesInForce> changed = inForce(h).with(rule.name(), rule.content());
          return changed.fold(
              rules -> Outcome.of(append(h, rule)),
              none -> Outcome.none(none.reason() + " The rule stays as it was.", none.remedy()));
        });
  }

  private static RulesInForce inForce(Handle h) {
    return RulesInForce.of(
        h.createQuery("select * from house_rule order by id").map(SqlHouseRules::rule).list());
  }

  private HouseRule append(Handle h, HouseRule rule) {
    SqlPeople.known(h, dayBook, rule.by());
    long id = CallRows.next(h, "house_rule");
    h.createUpdate(
            "insert into house_rule (id, name, content, person_id, at, why)"
                + " values (:id, :name, :content, :person, :at, :why)")
        .bind("id", id)
        .bind("name", rule.name().name())
        .bind("content", rule.content())
        .bind("person", rule.by().value())
        .bind("at", rule.at().toString())
        .bind("why", Optional.of(rule.why()).filter(why -> !why.isBlank()))
        .execute();
    dayBook.wrote(h, Kept.RULE, id, rule.name().word());
    return rule;
  }

  private static HouseRule rule(ResultSet row, StatementContext context) throws SQLException {
    return new HouseRule(
        RuleName.valueOf(row.getString("name")),
        row.getString("content"),
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        Optional.ofNullable(row.getString("why")).orElse(""));
  }
}
