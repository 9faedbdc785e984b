package org.comparanda.gui.shelf.skeleton;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.comparanda.bone.Side;
import org.comparanda.gui.capture.ReadingField;
import org.comparanda.gui.capture.ReadingRow;
import org.comparanda.gui.shelf.keeping.Written;
import org.comparanda.gui.text.Words;

/** The readings of both sides beside each other, with the field where the next one goes. */
final class SidesTable extends GridPane {
  private static final int A_SIDE = 3;
  private static final int FIRST = 2;

  private final SkeletonViewModel model;
  private final Words words;
  private final Words benchWords;
  private final ReadingField field;

  SidesTable(SkeletonViewModel model, LongSupplier nanos) {
    this.model = model;
    words = model.room().words();
    benchWords = model.room().reading().words();
    setId("skeleton-table");
    getStyleClass().addAll("readings", "skeleton-table");
    field = new ReadingField(model.inHand().readings(), benchWords.get("reading"), nanos);
    model.inHand().rows().addListener((ListChangeListener<SkeletonRow>) change -> show());
    show();
  }

  /** The field, for the focus. */
  ReadingField field() {
    return field;
  }

  private boolean axial() {
    return model.inHand().rows().stream().allMatch(row -> row.second().isEmpty());
  }

  private void show() {
    boolean focused = field.isFocused();
    getChildren().clear();
    int last = axial() ? FIRST + A_SIDE : FIRST + 2 * A_SIDE;
    columns(last);
    headings(last);
    boolean open = false;
    for (int i = 0; i < model.inHand().rows().size(); i++) {
      SkeletonRow row = model.inHand().rows().get(i);
      int at = i + 2;
      if (row.waits().isPresent()) {
        Region ground = new Region();
        ground.getStyleClass().add("row-current");
        add(ground, 0, at, last + 1, 1);
      }
      add(Written.label(row.first().code().value(), "reading", "code"), 0, at);
      add(Written.wrapped(row.first().name(), "note", "skeleton-name"), 1, at);
      side(row.first(), FIRST, at);
      row.second().ifPresent(second -> side(second, FIRST + A_SIDE, at));
      add(difference(row), last, at);
      if (row.waits().isPresent()) {
        open = true;
        boolean right = row.waits().get() == Side.RIGHT;
        ReadingRow now = right ? row.second().orElse(row.first()) : row.first();
        int column = (right ? FIRST + A_SIDE : FIRST) + (now.first().isEmpty() ? 0 : 1);
        add(field, column, at);
      }
    }
    if (!open && model.inHand().readings().passes().isPresent()) {
      // after the last pass the keys still work: one more take, undo, put on the card
      add(field, FIRST, model.inHand().rows().size() + 2);
    }
    if (focused && field.getParent() != null) {
      field.requestFocus();
    }
  }

  private void columns(int last) {
    List<ColumnConstraints> all = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      ColumnConstraints column = new ColumnConstraints();
      boolean name = i == 1;
      column.setHgrow(name ? Priority.ALWAYS : Priority.NEVER);
      column.setHalignment(i < FIRST ? HPos.LEFT : HPos.RIGHT);
      column.setMinWidth(name ? 0 : USE_PREF_SIZE);
      all.add(column);
    }
    getColumnConstraints().setAll(all);
  }

  private void headings(int last) {
    if (model.inHand().rows().isEmpty()) {
      return;
    }
    if (!axial()) {
      side("side.left", FIRST);
      side("side.right", FIRST + A_SIDE);
      add(Written.label(words.get("skeleton.difference"), "note"), last, 1);
    }
    for (int from = FIRST; from < last; from += A_SIDE) {
      int column = from;
      for (String key : List.of("pass.1", "pass.2", "kept")) {
        add(Written.label(benchWords.get(key), "note", "value"), column++, 1);
      }
    }
  }

  private void side(String key, int from) {
    Label label = Written.label(words.get(key), "strong");
    setHalignment(label, HPos.CENTER);
    add(label, from, 0, A_SIDE, 1);
  }

  private void side(ReadingRow row, int from, int at) {
    if (row.standing() == ReadingRow.Standing.GONE) {
      add(Written.label(row.kept(), "grey"), from, at, A_SIDE, 1);
      return;
    }
    add(Written.label(row.first(), "value"), from, at);
    add(Written.label(row.second(), "value"), from + 1, at);
    add(Written.label(row.kept(), "reading", "value"), from + 2, at);
  }

  private Label difference(SkeletonRow row) {
    return row.standing() == SkeletonRow.Standing.DIFFER
        ? Written.label(words.get("skeleton.differ", row.difference()), "warning")
        : Written.label(row.difference(), "grey");
  }
}
