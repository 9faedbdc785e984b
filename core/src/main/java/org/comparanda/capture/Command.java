package org.comparanda.capture;

/** What the person at the bench asked for. */
public sealed interface Command {
  /** The field now holds this text; nothing else happens. */
  record Edit(String text) implements Command {}

  /** Take this hand-typed text as the reading, then the next field. */
  record Accept(String text) implements Command {}

  /** Take this burst whole; a single value that ended with a line end goes on to the next field. */
  record AcceptBurst(String text) implements Command {}

  /** Take what the warning proposes in place of the text typed. */
  record AcceptProposal(String text) implements Command {}

  /** This measurement can't be taken, for this reason. */
  record CannotTake(NotPossible reason) implements Command {}

  /** Something that is no reading. */
  record Do(Errand errand) implements Command {}

  /** The answer to what was asked over the field. */
  record Answer(String text) implements Command {}

  /** A command without anything more to say. */
  enum Plain implements Command {
    SHOW_REASONS,
    HIDE_REASONS,
    ANOTHER_TAKE,
    UNDO,
    RECORD_CALL,
    PREVIOUS,
    LIST_ERRANDS,
    NO_ANSWER,
    ASK_STOP,
    STOP,
    NO_STOP,
    STAY
  }

  /** Nothing was done; the sentence says why. */
  record Ignored(String sentence) implements Command {}
}
