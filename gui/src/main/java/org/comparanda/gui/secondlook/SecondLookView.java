package org.comparanda.gui.secondlook;

import java.util.List;
import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Pick;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.measurement.Person;

/**
 * The Second Look: the queue at the left, the open bone at the right; agreement on its own page.
 */
public final class SecondLookView extends BorderPane {
  private final SecondLookViewModel model;
  private final LookWords words;
  private final OpenPane open;
  private final PlainScroll page = new PlainScroll(new Region());

  /**
   * Builds the view; it looks at the collection each time it comes into the window.
   *
   * @param note what is said beside the title (simulated demo data), may be empty
   */
  public SecondLookView(SecondLookViewModel model, String note) {
    this.model = model;
    this.words = model.said();
    setId("secondlook-screen");
    getStyleClass().addAll("screen", "secondlook");
    getStylesheets()
        .add(
            Objects.requireNonNull(SecondLookView.class.getResource("secondlook.css"))
                .toExternalForm());
    QueuePane queue = new QueuePane(model, this::focusOpen);
    open = new OpenPane(model, queue::focusList);
    HBox looks = new HBox(queue, open);
    looks.getStyleClass().add("halves");
    AgreementPane agreement = new AgreementPane(model);
    setTop(header(note, looks, agreement));
    page.setFitToHeight(true);
    page.setFocusTraversable(false);
    page.setContent(looks);
    setCenter(page);
    setBottom(message());
    parentProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                model.refresh();
              }
            });
  }

  private void focusOpen() {
    open.focusFirst();
  }

  private FlowPane header(String note, Region looks, Region agreement) {
    Label title = new Label(words.get("title"));
    title.getStyleClass().add("title");
    Label says = new Label(note);
    says.getStyleClass().add("note");
    ToggleGroup pages = new ToggleGroup();
    ToggleButton looksPage = page("looks", pages, looks);
    looksPage.setSelected(true);
    FlowPane header =
        new FlowPane(title, says, looksPage, page("agreement", pages, agreement), person());
    header.getStyleClass().add("header");
    return header;
  }

  private ToggleButton page(String key, ToggleGroup pages, Region shown) {
    ToggleButton button = new ToggleButton(words.get("page." + key));
    button.setId("page-" + key);
    button.setToggleGroup(pages);
    button.getStyleClass().add("flag");
    button.setOnAction(
        event -> {
          button.setSelected(true);
          page.setContent(shown);
        });
    return button;
  }

  private VBox person() {
    Pick<Person> pick =
        new Pick<>(
            "me", words.get("me"), List.of(), p -> p.name().isBlank() ? p.id().value() : p.name());
    pick.box().setPromptText(words.get("me.prompt"));
    return pick.follow(model.people(), model.personProperty(), model::sit);
  }

  private Label message() {
    Label message = new Label();
    message.setId("message");
    message.setWrapText(true);
    message.getStyleClass().add("message");
    message.textProperty().bind(model.messageProperty());
    message.managedProperty().bind(model.messageProperty().isNotEmpty());
    return message;
  }
}
