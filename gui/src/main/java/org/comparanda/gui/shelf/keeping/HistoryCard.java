package org.comparanda.gui.shelf.keeping;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.layout.VBox;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.gui.text.Words;

/** What the Day Book says of the animal. */
final class HistoryCard extends VBox {
  private final CardViewModel model;
  private final Words words;
  private final DateTimeFormatter times;
  private final VBox lines = new VBox();

  HistoryCard(CardViewModel model) {
    this.model = model;
    words = model.room().words();
    times =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withLocale(model.room().locale())
            .withZone(ZoneId.systemDefault());
    getStyleClass().addAll("card", "history-card");
    lines.getStyleClass().add("history");
    getChildren().addAll(Written.label(words.get("history"), "strong"), lines);
    model.history().addListener((ListChangeListener<DayBookEntry>) change -> show());
    show();
  }

  private void show() {
    lines.getChildren().clear();
    for (DayBookEntry entry : model.history()) {
      Change change = Change.read(entry.content());
      String by = change.by().isEmpty() ? "" : words.get("history.by", change.by());
      lines.getChildren().add(Written.wrapped(times.format(entry.at()) + by, "note"));
      List.of(
              (change.words().isEmpty() ? words.get("history.import") : change.words())
                  .split("; ", -1))
          .forEach(line -> lines.getChildren().add(Written.wrapped(line)));
    }
  }
}
