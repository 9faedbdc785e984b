package org.comparanda.cli;

import org.comparanda.house.Grant;
import org.comparanda.house.Right;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whose right changes, which one, who changes it and why. */
final class GrantArguments {
  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "PERSON", description = "Whose right it is.")
  private String person = "";

  @Parameters(index = "1", paramLabel = "RIGHT", description = "Which right.")
  private Right right = Right.KEEPER;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why.")
  private String reason = "";

  /**
   * Records the change and says so.
   *
   * @param done what was done to the right, "given to"
   */
  void record(Grant.Kind kind, String done, Terminal terminal) {
    try (Collection opened = collection.open(terminal)) {
      CannotDo.orElse(
          opened
              .grants()
              .append(
                  new Grant(
                      0,
                      new PersonId(person),
                      right,
                      kind,
                      by.person(),
                      terminal.clock().instant(),
                      reason)));
      terminal.say("The right " + Words.of(right) + " was " + done + " " + person + ".");
    }
  }
}
