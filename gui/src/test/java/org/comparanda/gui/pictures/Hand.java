package org.comparanda.gui.pictures;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBoxTreeItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.comparanda.gui.capture.ReadingField;
import org.comparanda.gui.oldcards.OldCardsView;
import org.comparanda.gui.shelf.ShelfView;
import org.comparanda.gui.sizedesk.SizeDeskView;

/** Does with a screen what a person's hand would do, at once and without waiting. */
final class Hand {
  private final Scene scene;

  Hand(Scene scene) {
    this.scene = scene;
  }

  /** Types a text into a field and presses Enter. */
  void type(String field, String text) {
    TextField there = find(field, TextField.class);
    there.setText(text);
    there.fireEvent(new ActionEvent(there, there));
  }

  /** Types a text into a field and goes on. */
  void fill(String field, String text) {
    find(field, TextField.class).setText(text);
  }

  /** Hands a legacy list to the old cards as its dialog would. */
  void bringCards(Path list) {
    find("oldcards-screen", OldCardsView.class).bringIn(list);
  }

  /** Presses a key while a node has the focus. */
  void key(String node, KeyCode key) {
    key(node, key, Set.of());
  }

  /** Presses a key while a node has the focus and other keys are held. */
  void key(String node, KeyCode key, Set<KeyCode> held) {
    boolean shift = held.contains(KeyCode.SHIFT);
    boolean control = held.contains(KeyCode.CONTROL);
    find(node, Node.class)
        .fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, shift, control, false, false));
  }

  /** Opens a list, as Alt+Down or F4 does. */
  void open(String list) {
    find(list, ComboBox.class).show();
  }

  /** Lets the screen settle after a change. */
  void lay() {
    scene.getRoot().applyCss();
    scene.getRoot().layout();
  }

  /** Types a reading into the field of the bone in hand, and Enter. */
  void read(String mm) {
    ReadingField field = find("reading", ReadingField.class);
    mm.chars().forEach(c -> field.hand((char) c));
    field.hand('\n');
    lay();
  }

  /** Types into the field of the bone in hand, without Enter. */
  void typed(String text) {
    ReadingField field = find("reading", ReadingField.class);
    text.chars().forEach(c -> field.hand((char) c));
  }

  /** Presses a button. */
  void press(String button) {
    find(button, ButtonBase.class).fire();
    scene.getRoot().applyCss();
    scene.getRoot().layout();
  }

  /** Chooses the first entry of a list that begins so, in one language or another. */
  void choose(String list, String... begins) {
    chooseIn(find(list, ComboBox.class), text -> Stream.of(begins).anyMatch(text::startsWith));
  }

  @SuppressWarnings("unchecked") // a list of whatever; only its texts are looked at
  private static void chooseIn(ComboBox<?> list, Predicate<String> reads) {
    ComboBox<Object> box = (ComboBox<Object>) list;
    box.setValue(
        box.getItems().stream()
            .filter(item -> reads.test(box.getConverter().toString(item)))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("No such entry in " + box.getId() + ".")));
  }

  /** Chooses the first entry of a list that holds this text, in any case. */
  void chooseSaying(String list, String says) {
    chooseIn(
        find(list, ComboBox.class), text -> text.toLowerCase(java.util.Locale.ROOT).contains(says));
  }

  /** Takes the ticks from the leaves of a tree whose entry fits. */
  void untick(String tree, Predicate<String> entry) {
    Optional.ofNullable(find(tree, TreeView.class).getRoot())
        .ifPresent(root -> untick(root, entry));
  }

  private static void untick(TreeItem<?> item, Predicate<String> entry) {
    if (item.isLeaf()
        && item instanceof CheckBoxTreeItem<?> box
        && entry.test(String.valueOf(item.getValue()))) {
      box.setSelected(false);
    }
    item.getChildren().forEach(child -> untick(child, entry));
  }

  /** Whether a table has no row. */
  boolean isEmpty(String table) {
    return find(table, TableView.class).getItems().isEmpty();
  }

  /** Selects a row of a table. */
  void select(String table, int row) {
    find(table, TableView.class).getSelectionModel().select(row);
  }

  /** Hands a table to the Shelf as its dialog would. */
  void importTable(Path table) {
    find("shelf-screen", ShelfView.class).importTable(table);
  }

  /** Hands a tree to the Size Desk as its dialog would. */
  void readTree(Path newick) {
    find("sizedesk-screen", SizeDeskView.class).readTree(newick);
  }

  /** Hands a file of equations to the Size Desk as its dialog would. */
  void readEquations(Path file) {
    find("sizedesk-screen", SizeDeskView.class).readEquations(file);
  }

  private <T extends Node> T find(String id, Class<T> kind) {
    return kind.cast(
        Optional.ofNullable(scene.lookup("#" + id))
            .orElseThrow(() -> new IllegalStateException("No \"" + id + "\" on the screen.")));
  }
}
