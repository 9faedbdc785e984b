package org.comparanda.capture;

import java.time.Clock;
import java.util.Optional;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.ReadingLog;

/**
 * One bone being measured by one person: runs the steps of its passes through the log. When a call
 * returns without a sentence, what it recorded is durable and the focus may move. Not for several
 * threads at once.
 */
public final class Measuring {
  private final ReadingLog log;
  private final Clock clock;
  private final PersonId person;
  private Passes passes;

  public Measuring(Passes restored, ReadingLog log, Clock clock, PersonId person) {
    passes = restored;
    this.log = log;
    this.clock = clock;
    this.person = person;
  }

  /** Where the measuring stands. */
  public Passes passes() {
    return passes;
  }

  /** Accepts what a hand typed; gives the sentence when it was refused. */
  public Optional<String> acceptTyped(String text) {
    return accept(CaliperText.withoutCard().typed(text), Optional.empty());
  }

  /** Accepts a burst through that card; gives the sentence when it was refused. */
  public Optional<String> acceptBurst(String text, Optional<CaliperCard> card) {
    return accept(new CaliperText(card).burst(text), card.map(CaliperCard::name));
  }

  private Optional<String> accept(CaliperInput input, Optional<String> card) {
    return input.fold(
        read -> run(passes.accept(read.values(), hand(card))), none -> Optional.of(none.reason()));
  }

  /** Accepts the proposal of a warning in place of what was typed or sent. */
  public Optional<String> acceptProposal(
      CaliperValue typed, Length proposal, String why, Optional<CaliperCard> card) {
    return run(passes.acceptProposal(typed, proposal, why, hand(card.map(CaliperCard::name))));
  }

  public Optional<String> notPossible(NotPossible reason) {
    return run(passes.notPossible(reason, hand(Optional.empty())));
  }

  public Optional<String> undo() {
    return run(passes.undo(hand(Optional.empty())));
  }

  public Optional<String> previous() {
    return run(passes.previous());
  }

  /** Goes to a field of the pass that is on. */
  public Optional<String> goTo(MeasurementCode code) {
    return run(passes.goTo(code));
  }

  public Optional<String> anotherTake() {
    return run(passes.anotherTake());
  }

  private Hand hand(Optional<String> card) {
    return new Hand(person, clock.instant(), card);
  }

  private Optional<String> run(Step step) {
    return step.fold(
        append -> {
          passes = passes.with(log.append(append.rows()));
          return Optional.empty();
        },
        move -> {
          passes = move.next();
          return Optional.empty();
        },
        refused -> Optional.of(refused.sentence()));
  }
}
