package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.house.RuleName;
import org.comparanda.house.RulesInForce;
import org.comparanda.statistics.Outcome;

/** Reads rules of the house from a table with the columns {@code rule} and {@code value}. */
public final class RulesTable {
  private RulesTable() {}

  /** These rules with those of the table in their place; or which row is wrong. */
  public static Outcome<RulesInForce> read(Path path, RulesInForce house) {
    ProblemList problems = new ProblemList(String.valueOf(path.getFileName()));
    List<Setting> settings = new ArrayList<>();
    try {
      Optional<RowSource> opened =
          TableOpening.rows(path, Optional.empty(), ReadingProgress.unwatched(), problems);
      if (opened.isPresent()) {
        RowSource file = opened.get();
        int rule = file.header().indexOf("rule");
        int value = file.header().indexOf("value");
        if (rule < 0 || value < 0) {
          problems.row(1, "the columns rule and value are needed", "Head the columns so.");
        } else {
          file.eachRow(
              problems,
              (row, cells) ->
                  settings.add(new Setting(row, cells.get(rule).text(), cells.get(value).text())));
        }
      }
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check the name and the folder.");
    }
    RulesInForce rules = house;
    for (Setting setting : settings) {
      rules = set(rules, setting, problems);
    }
    return problems.isEmpty()
        ? Outcome.of(rules)
        : Outcome.none(
            String.join("\n", problems.report().lines()), "Correct the rules and start again.");
  }

  private record Setting(long row, String rule, String value) {}

  private static RulesInForce set(RulesInForce rules, Setting setting, ProblemList problems) {
    Optional<RuleName> name = RuleName.ofWord(setting.rule());
    if (name.isEmpty()) {
      problems.cell(
          setting.row(),
          "rule",
          setting.rule(),
          "there is no such rule",
          "Write one of "
              + Stream.of(RuleName.values()).map(RuleName::word).collect(Collectors.joining(", "))
              + ".");
      return rules;
    }
    return rules
        .with(name.get(), setting.value())
        .fold(
            set -> set,
            none -> {
              problems.cell(setting.row(), "value", setting.value(), none.reason(), none.remedy());
              return rules;
            });
  }
}
