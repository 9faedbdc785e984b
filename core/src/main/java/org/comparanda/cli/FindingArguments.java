package org.comparanda.cli;

import java.util.List;
import java.util.Optional;
import org.comparanda.check.AcceptedFinding;
import org.comparanda.check.Correction;
import org.comparanda.check.Finding;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Change;
import org.comparanda.register.ChangeNote;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Option;

/** What a keeper says of one finding of the list: right as it is, or put right as proposed. */
final class FindingArguments {
  @Option(
      names = "--accept",
      paramLabel = "N",
      description =
          "Accept the finding with this number in the list as right; needs --reason. It comes up"
              + " again when the value changes.")
  private int accept;

  @Option(
      names = "--correct",
      paramLabel = "N",
      description =
          "Do what the finding with this number proposes; needs --by and --reason. Only where the"
              + " list says [--correct].")
  private int correct;

  @Option(
      names = "--reason",
      paramLabel = "TEXT",
      description = "Why it is accepted or corrected; it stands in the Day Book.")
  private String reason = "";

  @Option(names = "--by", paramLabel = "PERSON", description = "Who accepts or corrects it.")
  private String person = "";

  boolean said() {
    return accept != 0 || correct != 0;
  }

  /** Does what was said; true where the shelf was changed by it. */
  boolean answer(List<Finding> findings, Collection opened, Terminal terminal) {
    if (accept != 0 && correct != 0) {
      throw new CannotDo(
          "Say either --accept or --correct: a finding is right, or it is put right. Nothing was"
              + " stored.");
    }
    if (accept != 0) {
      accept(findings, opened, terminal);
    } else if (correct != 0) {
      correct(findings, opened, terminal);
    }
    return correct != 0;
  }

  private void accept(List<Finding> findings, Collection opened, Terminal terminal) {
    if (reason.isBlank() || accept < 1 || accept > findings.size()) {
      throw new CannotDo(
          "Nothing was accepted: give a number from the list (1 to "
              + findings.size()
              + ") and a --reason.");
    }
    Finding finding = findings.get(accept - 1);
    opened
        .acceptedFindings()
        .accept(
            AcceptedFinding.of(
                finding,
                reason.strip(),
                Optional.of(person.strip()).filter(p -> !p.isEmpty()).map(PersonId::new),
                terminal.clock().instant()));
    terminal.note("Accepted: " + named(finding) + ".");
  }

  private void correct(List<Finding> findings, Collection opened, Terminal terminal) {
    if (reason.isBlank() || person.isBlank() || correct < 1 || correct > findings.size()) {
      throw new CannotDo(
          "Nothing was corrected: give a number from the list (1 to "
              + findings.size()
              + "), --by and --reason.");
    }
    Finding finding = findings.get(correct - 1);
    Correction correction =
        finding
            .correction()
            .orElseThrow(
                () ->
                    new CannotDo(
                        "Nothing was corrected: "
                            + named(finding)
                            + " proposes nothing that could be done without looking. "
                            + finding.remedy()));
    AnimalCard card =
        finding
            .animal()
            .flatMap(animal -> opened.register().card(new AnimalId(animal)))
            .orElseThrow(() -> new CannotDo("No animal stands behind " + named(finding) + "."));
    ChangeNote note = new ChangeNote(new PersonId(person.strip()), reason.strip());
    List<Change> made =
        ChangeArguments.done(
            correction
                .apply(card.animal())
                .then(right -> opened.register().change(card, card.withAnimal(right), note)));
    made.forEach(one -> terminal.note("Corrected: " + card.id() + ", " + one.line()));
  }

  /** Kind, animal and bone, as in the list. */
  static String named(Finding finding) {
    return finding.kind()
        + finding.animal().map(a -> ", " + a).orElse("")
        + finding.animal().flatMap(a -> finding.bone()).map(b -> ", " + b).orElse("");
  }
}
