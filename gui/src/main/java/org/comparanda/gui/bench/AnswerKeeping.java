package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import org.comparanda.exchange.json.KeptAnswerText;
import org.comparanda.exchange.json.ProgramVersion;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.tray.Call;
import org.comparanda.tray.KeptAnswer;
import org.comparanda.tray.KeptAnswers;

/** Keeps the answer that stood beside a call, whole, so that it can be reckoned again. */
record AnswerKeeping(KeptAnswers answers) {
  /** Keeps it; not done for a bone that may be human. */
  Outcome<List<KeptAnswer>> keep(Call call, Finding seen) {
    ProgramVersion program = ProgramVersion.current();
    Suggestion suggestion = seen.suggestion();
    KeptAnswerText text =
        KeptAnswerText.of(
            program,
            seen.comparison().rules(),
            seen.bone(),
            suggestion,
            seen.comparison().animalsBehind(suggestion));
    return answers.keep(
        List.of(
            new KeptAnswer(
                0,
                call.bone(),
                call.at(),
                Optional.of(call.id()),
                program.written(),
                suggestion.basis().shelfVersion(),
                text.toString())));
  }
}
