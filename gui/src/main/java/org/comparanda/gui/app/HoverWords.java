package org.comparanda.gui.app;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;
import org.comparanda.gui.text.Glossary;

/** Says what a word means while the pointer rests on it, anywhere in the window. */
final class HoverWords {
  private static final double WIDTH = 360;
  private static final double BELOW = 18;
  private static final int MOST = 3;

  private final Glossary glossary;
  private final Tooltip help = new Tooltip();
  private final PauseTransition rest = new PauseTransition(Duration.millis(700));
  private Optional<Node> over = Optional.empty();

  private HoverWords(Glossary glossary) {
    this.glossary = glossary;
    help.setWrapText(true);
    help.setMaxWidth(WIDTH);
  }

  static void on(Scene scene, Glossary glossary) {
    HoverWords words = new HoverWords(glossary);
    scene.addEventFilter(MouseEvent.MOUSE_MOVED, words::moved);
    scene.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> words.leave());
    scene.addEventFilter(MouseEvent.MOUSE_EXITED_TARGET, event -> words.leave());
  }

  private void moved(MouseEvent event) {
    Optional<Node> here =
        Optional.ofNullable(event.getPickResult().getIntersectedNode())
            .filter(node -> SeenTexts.text(node).isPresent());
    if (here.equals(over)) {
      return;
    }
    leave();
    over = here;
    here.ifPresent(
        node -> {
          rest.setOnFinished(finished -> say(node, event.getScreenX(), event.getScreenY() + BELOW));
          rest.playFromStart();
        });
  }

  private void say(Node node, double x, double y) {
    List<Glossary.Term> terms = glossary.seenIn(SeenTexts.text(node).stream());
    boolean explained = node.getProperties().values().stream().anyMatch(Tooltip.class::isInstance);
    if (!terms.isEmpty() && !explained && node.getScene() != null) {
      help.setText(
          terms.stream()
              .limit(MOST)
              .flatMap(term -> Stream.of(term.word() + ": " + term.meaning()))
              .collect(Collectors.joining("\n")));
      help.show(node, x, y);
    }
  }

  private void leave() {
    rest.stop();
    over = Optional.empty();
    help.hide();
  }
}
