package org.comparanda.gui.bench;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import org.comparanda.gui.capture.ReadingRow;
import org.comparanda.gui.capture.Styled;

/** The nodes of one line of the readings table, used again from reading to reading. */
final class ReadingStrip {
  private final Region ground = new Region();
  private final Label code = new Label();
  private final Label name = new Label();
  private final Label first = new Label();
  private final Label second = new Label();
  private final Label kept = new Label();
  private final Label why = new Label();

  ReadingStrip(int row) {
    GridPane.setConstraints(ground, 0, row, ReadingsCard.COLUMNS, 1);
    GridPane.setConstraints(code, 0, row);
    GridPane.setConstraints(name, 1, row);
    GridPane.setConstraints(first, 2, row);
    GridPane.setConstraints(second, 3, row);
    GridPane.setConstraints(kept, 4, row);
    GridPane.setConstraints(why, 2, row, 3, 1);
    name.setWrapText(true);
    name.setMinHeight(Region.USE_PREF_SIZE);
  }

  /** Its nodes, the ground first. */
  List<Node> nodes() {
    return List.of(ground, code, name, first, second, kept, why);
  }

  void show(ReadingRow row) {
    boolean now = row.standing() == ReadingRow.Standing.CURRENT;
    boolean gone = row.standing() == ReadingRow.Standing.GONE;
    Styled.as(ground, now ? "row-current" : "row");
    Styled.as(code, "label", gone ? "grey" : "reading", "code");
    code.setText(row.code().value());
    Styled.as(name, "label", "note");
    name.setText(row.name());
    Styled.as(first, "label", "value");
    first.setText(gone ? "" : row.first());
    Styled.as(second, "label", "value");
    second.setText(gone ? "" : row.second());
    Styled.as(kept, "label", now ? "grey" : "reading", "value");
    kept.setText(gone ? "" : row.kept());
    Styled.as(why, "label", "note");
    why.setText(gone ? row.kept() : "");
    why.setManaged(gone);
  }
}
