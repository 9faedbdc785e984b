package org.comparanda.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.exchange.json.KeptAnswerText;
import org.comparanda.exchange.json.ProgramVersion;
import org.comparanda.measurement.BoneId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.statistics.Outcome;
import org.comparanda.storage.Collection;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.tray.KeptAnswer;

/** Gathers the answers of one run and keeps them all together in the collection. */
final class AnswerKeeper {
  private final Terminal terminal;
  private final Path file;
  private final Comparison comparison;
  private final List<KeptAnswer> answers = new ArrayList<>();

  private AnswerKeeper(Terminal terminal, Path file, Comparison comparison) {
    this.terminal = terminal;
    this.file = file;
    this.comparison = comparison;
  }

  static AnswerKeeper of(Terminal terminal, ShelfArguments shelf, Comparison comparison) {
    Path file =
        shelf
            .collection()
            .orElseThrow(
                () ->
                    new CannotDo(
                        "--keep needs --collection FILE, where answers are kept. Nothing was"
                            + " done."));
    return new AnswerKeeper(terminal, file, comparison);
  }

  void take(BoneInHand bone, Suggestion suggestion) {
    ProgramVersion program = ProgramName.current();
    answers.add(
        KeptAnswer.withoutCall(
            new BoneId(bone.id()),
            terminal.clock().instant(),
            program.written(),
            comparison.shelfVersion(),
            KeptAnswerText.of(
                    program,
                    comparison.rules(),
                    bone,
                    suggestion,
                    comparison.animalsBehind(suggestion))
                .toString()));
  }

  void store() {
    try (Collection opened = Collection.open(file, terminal.clock())) {
      Outcome<List<KeptAnswer>> kept = opened.keptAnswers().keep(answers);
      if (kept.value().isEmpty()) {
        throw CannotDo.because(kept);
      }
      terminal.note("Kept " + Count.of(answers.size(), "answer") + " in " + file + ".");
    }
  }
}
