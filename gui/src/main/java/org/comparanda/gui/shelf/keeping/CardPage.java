package org.comparanda.gui.shelf.keeping;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.PlainScroll;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Changes;
import org.comparanda.taxon.TaxonName;

/** An animal's card to be edited: fields at the left; bones, doubles and history at the right. */
public final class CardPage extends BorderPane {
  private final CardViewModel model;
  private final Words words;
  private final Label number = Written.label("", "reading");
  private final Label taxon = Written.label("", "taxon");
  private final Label standing = Written.label("", "warning");
  private final Button retire;

  /**
   * The page.
   *
   * @param moves moves a bone of the open card
   * @param photos of the open card's animal
   * @param choose asks for files of pictures
   * @param close leaves it
   */
  public CardPage(
      CardViewModel model,
      MoveViewModel moves,
      PhotosViewModel photos,
      Supplier<List<Path>> choose,
      Runnable close) {
    this.model = model;
    words = model.room().words();
    setId("card-page");
    getStyleClass().add("card-page");
    retire =
        Written.button(words.get("card.retire"), "card-retire", model::retireOrReturn, "quiet");
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    HBox head =
        new HBox(
            number,
            taxon,
            standing,
            spring,
            retire,
            Written.button(words.get("card.close"), "card-close", close));
    head.getStyleClass().add("page-head");
    VBox left = new VBox(head, new PlainScroll(new CardForm(model)));
    left.getStyleClass().addAll("card", "card-left");
    VBox.setVgrow(left.getChildren().get(1), Priority.ALWAYS);
    HBox.setHgrow(left, Priority.ALWAYS);
    VBox side =
        new VBox(
            new BonesCard(model, moves),
            new PhotosCard(model, photos, choose),
            new DoublesCard(model),
            new HistoryCard(model));
    side.getStyleClass().add("card-side");
    HBox halves = new HBox(left, new PlainScroll(side));
    halves.getStyleClass().add("halves");
    halves.getChildren().get(1).getStyleClass().add("card-right");
    setCenter(halves);
    setBottom(bottom());
    model.cardProperty().addListener((o, was, is) -> show(is));
    show(model.cardProperty().get());
  }

  private VBox bottom() {
    SignatureBar signature = new SignatureBar(model.signature(), words);
    HBox.setHgrow(signature, Priority.ALWAYS);
    HBox row =
        new HBox(
            signature,
            Written.button(words.get("card.discard"), "card-discard", model::discard, "quiet"),
            Written.button(words.get("card.save"), "card-save", model::save, "record"));
    row.getStyleClass().add("page-row");
    VBox bottom = new VBox(Written.told(model.sentenceProperty(), "card-sentence", "strong"), row);
    bottom.getStyleClass().addAll("card", "page-foot");
    VBox apart = new VBox(bottom);
    apart.getStyleClass().add("page-below");
    return apart;
  }

  private void show(Optional<AnimalCard> card) {
    number.setText(card.map(c -> c.id().value()).orElse(words.get("card.new")));
    taxon.setText(card.flatMap(c -> c.animal().taxon()).map(TaxonName::value).orElse(""));
    standing.setText(
        card.filter(c -> !c.standing().onTheShelf())
            .map(c -> words.get("card.off", words.said(Changes.words(c.standing()))))
            .orElse(""));
    boolean merged = card.flatMap(c -> c.standing().mergedInto()).isPresent();
    boolean aside = card.filter(c -> c.standing().setAside()).isPresent();
    retire.setVisible(card.isPresent() && !merged && !aside);
    retire.setText(
        words.get(
            card.filter(c -> !c.standing().onTheShelf()).isPresent()
                ? "card.return"
                : "card.retire"));
  }
}
