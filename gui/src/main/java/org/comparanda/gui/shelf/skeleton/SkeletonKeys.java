package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.capture.Errand;
import org.comparanda.gui.capture.Ask;
import org.comparanda.gui.capture.Beyond;
import org.comparanda.gui.capture.Question;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel.Hands;
import org.comparanda.gui.text.Words;

/** What keys in the reading field mean for a skeleton. */
record SkeletonKeys(SkeletonViewModel skeleton) implements Beyond {
  /** What can be asked for here; the rest is about bones of a tray. */
  private static final List<Errand> HERE =
      List.of(
          Errand.DEFINITION,
          Errand.OTHER_SIDE,
          Errand.OTHER_ELEMENT,
          Errand.PIECES,
          Errand.CALIPER,
          Errand.KEY_CARD);

  @Override
  public void changed() {
    // nothing is reckoned from a skeleton before its values are on the card
  }

  @Override
  public void recorded() {
    skeleton.inHand().next();
  }

  @Override
  public boolean undoneElsewhere() {
    skeleton.inHand().beforeUndo();
    boolean nothingRead = skeleton.inHand().readings().untouched();
    if (nothingRead) {
      skeleton.inHand().state().ask();
    }
    return nothingRead;
  }

  /** The key that records the call on the Bench: here the values go to the card. */
  @Override
  public void recordCall() {
    skeleton.store();
  }

  @Override
  public void run(Errand errand) {
    switch (errand) {
      case DEFINITION ->
          skeleton
              .inHand()
              .definitionLargeProperty()
              .set(!skeleton.inHand().definitionLargeProperty().get());
      case OTHER_SIDE ->
          skeleton.choose(
              skeleton.handsProperty().get() == Hands.BOTH
                  ? one(skeleton.inHand().sideProperty().get())
                  : Hands.BOTH);
      case OTHER_ELEMENT -> skeleton.movingProperty().set(true);
      case CALIPER -> skeleton.inHand().question().ask(skeleton.inHand().caliper().ask());
      case KEY_CARD -> skeleton.keysShownProperty().set(true);
      case PIECES -> skeleton.anotherPiece();
      case MORE_LIKE_THIS, ACROSS_BREAK, FOUND_TOGETHER, SLIP ->
          skeleton.inHand().readings().say(skeleton.room().words().get("skeleton.tray.only"));
    }
  }

  /** That side alone; an element of the midline has no other. */
  static Hands one(Side side) {
    return side == Side.AXIAL ? Hands.BOTH : side == Side.RIGHT ? Hands.RIGHT : Hands.LEFT;
  }

  @Override
  public void listErrands() {
    Words words = skeleton.room().reading().words();
    List<Question.Choice> all =
        HERE.stream().map(e -> new Question.Choice("" + e.number(), said(e))).toList();
    skeleton
        .inHand()
        .question()
        .ask(
            new Ask(
                new Question(words.get("errands.title"), words.get("errands.how"), all),
                typed -> {
                  Optional<Errand> errand = Errand.ofText("0" + typed).filter(HERE::contains);
                  errand.ifPresent(this::run);
                  return errand.isPresent()
                      ? Optional.empty()
                      : Optional.of(words.get("answer.unknown", typed));
                }));
  }

  private String said(Errand errand) {
    return switch (errand) {
      case OTHER_SIDE -> skeleton.room().words().get("skeleton.errand.sides");
      case OTHER_ELEMENT -> skeleton.room().words().get("skeleton.errand.move");
      case PIECES -> skeleton.room().words().get("skeleton.errand.piece");
      default -> skeleton.room().reading().words().get("errand." + errand.name());
    };
  }

  @Override
  public void answer(String text) {
    skeleton.inHand().question().answer(text);
  }

  @Override
  public void stop() {
    skeleton.setAside();
  }
}
