package org.comparanda.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.comparanda.exchange.table.PriorTable;
import org.comparanda.exchange.table.SetAsideTable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Method;
import org.comparanda.suggestion.Priors;
import org.comparanda.suggestion.Scale;
import org.comparanda.suggestion.SetAside;
import org.comparanda.taxon.TaxonName;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How bones are compared with the shelf. */
final class ComparisonArguments {
  @Option(
      names = "--scale",
      defaultValue = "ln",
      paramLabel = "SCALE",
      description =
          "ln (default), raw or proportions. raw is there to compare with other programs.")
  private Scale scale = Scale.LN;

  @Option(
      names = "--method",
      defaultValue = "auto",
      paramLabel = "METHOD",
      description =
          "auto (default), linear, predictive, quadratic, regularised, shrunk-pooled,"
              + " shrunk-per-taxon, nearest or forest.")
  private String method = "auto";

  @Option(
      names = "--priors",
      paramLabel = "PRIORS",
      description =
          "equal (default unless the house says otherwise), shelf (as many animals as the shelf has), or a table with the columns"
              + " taxon,prior.")
  private @Nullable String priors;

  @Option(
      names = "--set-aside",
      paramLabel = "TAXON=REASON",
      description =
          "Leave a taxon of the shelf out because it cannot occur here; every answer says so."
              + " Repeatable; a table with the columns taxon,reason will do, too.")
  private List<String> setAside = List.of();

  /** Puts what was asked for in the place of what the house says. */
  UnaryOperator<ComparisonRules> asked() {
    Method way = method();
    Optional<Priors> named = Optional.ofNullable(priors).map(ComparisonArguments::priors);
    List<SetAside> further = setAside();
    return house ->
        house
            .withScale(scale)
            .withMethod(way)
            .withPriors(named.orElse(house.priors()))
            .withSetAside(
                Stream.concat(house.setAside().stream(), further.stream()).distinct().toList());
  }

  /** The word as asked for. */
  String methodWord() {
    return MethodWord.of(method());
  }

  TableOptions.Numbers numbers() {
    return scale == Scale.RAW ? TableOptions.Numbers.ANY_SIGN : TableOptions.Numbers.ABOVE_ZERO;
  }

  private Method method() {
    return MethodWord.read(method)
        .orElseThrow(
            () ->
                new CannotDo(
                    "\""
                        + method
                        + "\" after --method is no method. Nothing was done. See --help for the list."));
  }

  private List<SetAside> setAside() {
    List<SetAside> all = new ArrayList<>();
    for (String word : setAside) {
      int sign = word.indexOf('=');
      if (sign < 0) {
        all.addAll(
            SetAsideTable.read(Path.of(word))
                .fold(
                    list -> list,
                    none -> {
                      throw new CannotDo(none.reason() + "\n" + none.remedy());
                    }));
      } else if (sign == 0 || word.substring(sign + 1).isBlank()) {
        throw new CannotDo(
            "\""
                + word
                + "\" after --set-aside names no taxon or no reason. Nothing was done. Write"
                + " TAXON=REASON.");
      } else {
        all.add(
            new SetAside(
                new TaxonName(word.substring(0, sign).strip()), word.substring(sign + 1).strip()));
      }
    }
    return all;
  }

  private static Priors priors(String asked) {
    return switch (asked) {
      case "equal" -> Priors.equal();
      case "shelf" -> Priors.shelf();
      default ->
          PriorTable.read(Path.of(asked))
              .fold(
                  p -> p,
                  none -> {
                    throw new CannotDo(none.reason() + "\n" + none.remedy());
                  });
    };
  }
}
