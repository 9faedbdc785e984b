package org.comparanda.gui.photos;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.collections.ListChangeListener;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javax.imageio.ImageIO;
import org.comparanda.gui.text.Words;

/** Thumbnails in a row; files can be dropped, pasted or chosen. */
public final class PhotoStrip extends VBox {
  private static final double THUMBNAIL = 96;

  private final PhotosViewModel photos;
  private final Words words;
  private final FlowPane row = new FlowPane();

  /**
   * @param choose asks for files
   */
  public PhotoStrip(PhotosViewModel photos, Words words, Supplier<List<Path>> choose) {
    this.photos = photos;
    this.words = words;
    setId("photos");
    getStyleClass().add("photo-strip");
    row.getStyleClass().add("photo-row");
    Button add = new Button(words.get("photo.add"));
    add.setId("photo-add");
    add.getStyleClass().setAll("tray-button", "lesson-again");
    add.setOnAction(event -> photos.add(choose.get()));
    Button paste = new Button(words.get("photo.paste"));
    paste.setId("photo-paste");
    paste.getStyleClass().setAll("tray-button", "lesson-again");
    paste.setOnAction(event -> paste());
    Label message = new Label();
    message.setId("photo-message");
    message.setWrapText(true);
    message.setMinHeight(Region.USE_PREF_SIZE);
    message.getStyleClass().add("note");
    message
        .textProperty()
        .bind(photos.messageProperty().map(said -> said.isBlank() ? words.get("photo.how") : said));
    FlowPane buttons = new FlowPane(add, paste);
    buttons.getStyleClass().add("photo-row");
    getChildren().addAll(row, message, buttons);
    setOnDragOver(PhotoStrip::over);
    setOnDragDropped(this::dropped);
    photos.shown().addListener((ListChangeListener<PhotosViewModel.Shown>) change -> show());
    disableProperty().bind(photos.subjectProperty().map(Optional::isEmpty));
    show();
  }

  private void show() {
    row.getChildren().clear();
    for (PhotosViewModel.Shown one : photos.shown()) {
      String said =
          words.get(
              one.small().isPresent() ? "photo.said" : "photo.gone",
              one.photo().name(),
              one.photo().width(),
              one.photo().height(),
              one.photo().hash().substring(0, 12));
      row.getChildren()
          .add(one.small().map(file -> picture(file, said)).orElseGet(() -> gone(said)));
    }
  }

  private static Node picture(Path file, String said) {
    ImageView view = new ImageView();
    view.setPreserveRatio(true);
    view.setFitHeight(THUMBNAIL);
    view.setImage(new Image(file.toUri().toString(), true));
    view.setAccessibleText(said);
    Tooltip.install(view, new Tooltip(said));
    return view;
  }

  private static Node gone(String said) {
    Label label = new Label(said);
    label.setWrapText(true);
    label.getStyleClass().add("warning");
    return label;
  }

  private static void over(DragEvent event) {
    if (event.getDragboard().hasFiles()) {
      event.acceptTransferModes(TransferMode.COPY);
    }
    event.consume();
  }

  private void dropped(DragEvent event) {
    photos.add(event.getDragboard().getFiles().stream().map(File::toPath).toList());
    event.setDropCompleted(true);
    event.consume();
  }

  /** Takes files or a picture from the clipboard. */
  public void paste() {
    Clipboard clipboard = Clipboard.getSystemClipboard();
    if (clipboard.hasFiles()) {
      photos.add(clipboard.getFiles().stream().map(File::toPath).toList());
    } else if (clipboard.hasImage()) {
      photos.add(words.get("photo.pasted"), png(clipboard.getImage()));
    } else {
      photos.messageProperty().set(words.get("photo.nothing"));
    }
  }

  private static byte[] png(Image image) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(SwingFXUtils.fromFXImage(image, null), "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
