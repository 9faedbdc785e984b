package org.comparanda.gui.sizedesk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import org.comparanda.gui.control.FilePlace;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.gui.control.plot.FigureExport;
import org.comparanda.gui.control.plot.PlotView;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.AnimalId;

/** The plot, the numbers under it, and saving both. */
final class PlotPage extends BorderPane {
  private final SizeDeskViewModel model;
  private final Words words;
  private final FilePlace files;
  private final PlotView plot = new PlotView();
  private final NumberStrip numbers;
  private final Label saved = new Label();

  PlotPage(SizeDeskViewModel model, Words words, FilePlace files, Consumer<AnimalId> openAnimal) {
    this.model = model;
    this.words = words;
    this.files = files;
    this.numbers = new NumberStrip(words);
    plot.setId("plot");
    plot.setOnPoint(
        id -> {
          if (!id.isEmpty()) {
            openAnimal.accept(new AnimalId(id));
          }
        });
    setCenter(plot);
    setBottom(numbers);
    model.shownProperty().addListener((o, was, is) -> show(is));
    show(model.shownProperty().get());
  }

  private void show(SizeShown shown) {
    saved.setText("");
    plot.figureProperty().set(shown.figure());
    plot.setAccessibleText(shown.answer().sentence());
    numbers.show(shown.numbers());
  }

  /** Axes and saving, for the row of the pages. */
  HBox tools() {
    CheckBox log = new CheckBox(words.get("axes.log"));
    log.setId("log-axes");
    log.setMinWidth(USE_PREF_SIZE);
    log.setSelected(model.axesProperty().get() == AxisScale.LOG);
    log.setOnAction(
        event -> model.axesProperty().set(log.isSelected() ? AxisScale.LOG : AxisScale.PLAIN));
    MenuButton save = new MenuButton(words.get("export"));
    save.setId("save");
    save.setMinWidth(USE_PREF_SIZE);
    for (FigureExport.Format format : FigureExport.Format.values()) {
      MenuItem item = new MenuItem(words.get("export." + format.ending()));
      item.setOnAction(event -> savePlot(format));
      save.getItems().add(item);
    }
    MenuItem csv = new MenuItem(words.get("export.csv"));
    csv.setOnAction(event -> saveTable());
    save.getItems().add(csv);
    save.disableProperty().bind(model.shownProperty().map(shown -> shown.figure().isEmpty()));
    log.setMinWidth(USE_PREF_SIZE);
    save.setMinWidth(USE_PREF_SIZE);
    saved.setId("saved");
    saved.getStyleClass().add("note");
    HBox tools = new HBox(saved, log, save);
    tools.getStyleClass().add("tools");
    tools.setAlignment(Pos.CENTER_RIGHT);
    return tools;
  }

  private void savePlot(FigureExport.Format format) {
    model.shownProperty().get().figure().ifPresent(figure -> savePlot(figure, format));
  }

  private void savePlot(Figure figure, FigureExport.Format format) {
    files
        .choose("size-line." + format.ending())
        .ifPresent(file -> save(file, () -> FigureExport.write(figure, format, file)));
  }

  private void saveTable() {
    String table = model.shownProperty().get().table();
    files
        .choose("size-line.csv")
        .ifPresent(
            file ->
                save(
                    file,
                    () -> {
                      try {
                        Files.write(file, table.getBytes(StandardCharsets.UTF_8));
                      } catch (IOException e) {
                        throw new UncheckedIOException(e);
                      }
                    }));
  }

  private void save(Path file, Runnable writing) {
    try {
      writing.run();
      saved.setText(words.get("export.done", file));
    } catch (UncheckedIOException e) {
      saved.setText(words.get("export.failed", file));
    }
  }
}
