package org.comparanda.gui.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.text.Glossary;
import org.comparanda.gui.text.Words;

/**
 * The one window's content: the rail and the open screen, which scrolls where large text needs more
 * room than the window has.
 */
public final class AppFrame extends BorderPane {
  private final List<Screen> screens;
  private final Map<String, Region> opened = new HashMap<>();
  private final PlainScroll place = new PlainScroll(new Region());
  private final Look look;
  private final Rail rail;
  private final Glossary glossary;
  private final WordsPane wordsPane;
  private Optional<Node> before = Optional.empty();

  public AppFrame(List<Screen> screens, Look look, Words words) {
    this.screens = screens;
    this.look = look;
    this.rail = new Rail(screens, look, words, this::open);
    glossary = Glossary.in(words.locale());
    wordsPane = new WordsPane(words, this::closeWords);
    rail.setOnWords(this::explainWords);
    getStyleClass().add("frame");
    setLeft(scrolled(rail));
    place.setFitToHeight(true);
    place.setFocusTraversable(false);
    setCenter(place);
    if (!screens.isEmpty()) {
      open(screens.get(0));
    }
  }

  /** Large text needs more height than the window has, and every button of the rail is needed. */
  private static PlainScroll scrolled(Rail rail) {
    PlainScroll scroll = new PlainScroll(rail);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("rail-place");
    return scroll;
  }

  Rail rail() {
    return rail;
  }

  /** Opens a screen; its view is made the first time and kept. */
  public void open(Screen screen) {
    place.setContent(opened.computeIfAbsent(screen.key(), key -> screen.view().get()));
    rail.mark(screen);
  }

  /** Opens the screen with that key, if there is one. */
  public void open(String key) {
    screens.stream().filter(s -> s.key().equals(key)).findFirst().ifPresent(this::open);
  }

  /** Says what the words mean that the open screen shows, those of the focused control first. */
  void explainWords() {
    if (getBottom() != null) {
      closeWords();
      return;
    }
    before = Optional.ofNullable(getScene().getFocusOwner());
    List<Glossary.Term> here = glossary.seenIn(before.stream().flatMap(SeenTexts::in));
    List<Glossary.Term> all = new ArrayList<>(here);
    glossary.seenIn(SeenTexts.in(place.getContent())).stream()
        .filter(term -> !here.contains(term))
        .forEach(all::add);
    setBottom(wordsPane);
    wordsPane.show(all);
  }

  private void closeWords() {
    setBottom(null);
    before.ifPresent(Node::requestFocus);
  }

  private void helpKey(KeyEvent event) {
    if (event.getCode() == KeyCode.F1) {
      event.consume();
      explainWords();
    }
  }

  /**
   * A dressed scene of this frame with its keys: Ctrl+1 … for the screens, Ctrl+F to find, Ctrl +
   * and − for text, F1 where it means nothing else, and Ctrl+F1 everywhere, for the words.
   */
  public Scene scene(double width, double height) {
    Scene scene = new Scene(this, width, height);
    for (int i = 0; i < Math.min(9, screens.size()); i++) {
      Screen screen = screens.get(i);
      KeyCode digit = KeyCode.valueOf("DIGIT" + (i + 1));
      scene.getAccelerators().put(control(digit), () -> open(screen));
    }
    scene.getAccelerators().put(control(KeyCode.F), this::find);
    scene.getAccelerators().put(control(KeyCode.PLUS), () -> look.enlarge(25));
    scene.getAccelerators().put(control(KeyCode.EQUALS), () -> look.enlarge(25));
    scene.getAccelerators().put(control(KeyCode.MINUS), () -> look.enlarge(-25));
    scene.getAccelerators().put(control(KeyCode.F1), this::explainWords);
    scene.addEventHandler(KeyEvent.KEY_PRESSED, this::helpKey);
    HoverWords.on(scene, glossary);
    look.dress(scene);
    return scene;
  }

  /** Opens the one field that finds everything. */
  private void find() {
    open("tray");
    place.getContent().applyCss(); // a screen that was just made has its nodes from here on
    Optional.ofNullable(place.getContent().lookup("#find")).ifPresent(Node::requestFocus);
  }

  private static KeyCombination control(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN);
  }
}
