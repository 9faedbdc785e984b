package org.comparanda.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.comparanda.bone.BoneAge;
import org.comparanda.exchange.json.ShelfInUse;
import org.comparanda.exchange.json.SuggestionJson;
import org.comparanda.exchange.table.BoneTable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.BoneInHand;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Suggestion;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Taxon suggestions for every bone of a table. */
@Command(
    name = "suggest",
    description = {
      "Suggest the taxa that each bone of a table fits, the drawers to open and what to measure"
          + " next.",
      "A suggestion is not an identification."
    },
    mixinStandardHelpOptions = true)
final class SuggestCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "BONES", description = "CSV, one row per bone in hand.")
  private Path bones = Path.of("");

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private ComparisonArguments comparing = new ComparisonArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  @Option(
      names = "--age",
      paramLabel = "AGE",
      description = "recent, archaeological or fossil: how old the bones are.")
  private @Nullable BoneAge age;

  @Option(
      names = "--keep",
      description =
          "Keep every answer whole in the collection, with readings and rules, to be reckoned again"
              + " (kept check).")
  private boolean keep;

  SuggestCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    UnaryOperator<ComparisonRules> asked = comparing.asked();
    TableOptions options = tables.options().withNumbers(comparing.numbers());
    ShelfArguments.Opened opened = shelf.open(terminal, options);
    ComparisonRules rules =
        asked
            .apply(opened.rules().comparison())
            .withAge(Optional.ofNullable(age).orElse(BoneAge.NOT_KNOWN));
    TableRead<BoneTable> read =
        TableReader.of(opened.tables().protocol(), opened.tables().taxa(), options)
            .watchedBy(new ProgressLine(terminal, bones))
            .bones(opened.shelf(), bones)
            .fold(
                r -> r,
                report -> {
                  throw new CannotDo(report.lines());
                });
    tables.everyMappingFound(opened.factsAnd(read.facts()));
    terminal.note(read.facts().sentence());
    Comparison comparison =
        Comparison.of(opened.shelf(), read.protocol(), opened.tables().taxa(), rules);
    Optional<AnswerKeeper> keeper = keeper(comparison);
    RowCounter counter = new RowCounter(terminal, read.facts().rows());
    if (json.file().isPresent()) {
      ShelfInUse inUse =
          ShelfInUse.of(opened.shelf(), rules.priors().name(), comparing.methodWord());
      JsonArgument.write(
          json.file().get(),
          writer -> {
            try (SuggestionJson out =
                new SuggestionJson(writer, ProgramName.current(), inUse, rules)) {
              eachBone(read.content(), comparison, counter, both(out::write, keeper));
            }
          });
      terminal.say(
          "Suggestions for " + Count.of(counter.done(), "bone") + ": " + json.file().get());
    } else {
      SuggestionText text = new SuggestionText(terminal);
      eachBone(read.content(), comparison, counter, both(text::write, keeper));
    }
    keeper.ifPresent(AnswerKeeper::store);
    return Terminal.FINE;
  }

  private Optional<AnswerKeeper> keeper(Comparison comparison) {
    return keep ? Optional.of(AnswerKeeper.of(terminal, shelf, comparison)) : Optional.empty();
  }

  /** Takes one suggestion after the other. */
  private interface Writing {
    void write(Suggestion suggestion) throws IOException;
  }

  /** Takes one bone after the other with its suggestion. */
  private interface Taker {
    void take(BoneInHand bone, Suggestion suggestion) throws IOException;
  }

  private static Taker both(Writing writing, Optional<AnswerKeeper> keeper) {
    return (bone, suggestion) -> {
      writing.write(suggestion);
      keeper.ifPresent(k -> k.take(bone, suggestion));
    };
  }

  private static void eachBone(
      BoneTable bones, Comparison comparison, RowCounter counter, Taker taker) throws IOException {
    try {
      bones.forEach(
          bone -> {
            try {
              taker.take(bone, comparison.suggest(bone));
              counter.oneMore();
            } catch (IOException problem) {
              throw new UncheckedIOException(problem);
            }
          });
    } catch (UncheckedIOException problem) {
      throw problem.getCause();
    }
  }
}
