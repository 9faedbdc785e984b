package org.comparanda.gui.secondlook;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.comparanda.gui.control.Pick;
import org.comparanda.gui.control.ReadableColumns;
import org.comparanda.gui.secondlook.AgreementShown.KappaLine;
import org.comparanda.gui.secondlook.AgreementShown.PairLine;
import org.comparanda.gui.secondlook.AgreementShown.WhyLine;

/** How far people agree: from the every-nth draw alone; targeted looks in tables of their own. */
final class AgreementPane extends VBox {
  private final LookWords words;

  AgreementPane(SecondLookViewModel model) {
    words = model.said();
    AgreementViewModel agreement = model.agreement();
    getStyleClass().add("agreement");
    Label sentence = new Label();
    sentence.setId("agreement-sentence");
    sentence.getStyleClass().add("strong");
    sentence.setWrapText(true);
    sentence.setMinHeight(USE_PREF_SIZE);
    Pick<AgreementViewModel.Rank> rank =
        new Pick<>(
            "rank",
            words.get("rank"),
            List.of(AgreementViewModel.Rank.values()),
            r -> words.word("rank", r));
    rank.box().valueProperty().bindBidirectional(agreement.rankProperty());
    agreement.rankProperty().addListener((o, was, is) -> model.refresh());
    TableView<KappaLine> kappas = table("kappas", "kappa.none");
    column(kappas, "kappa.name", 165, KappaLine::name);
    column(kappas, "kappa.value", 55, KappaLine::value);
    column(kappas, "kappa.lower", 55, KappaLine::lower);
    column(kappas, "kappa.upper", 92, KappaLine::upper);
    column(kappas, "kappa.bones", 60, KappaLine::bones);
    column(kappas, "kappa.missing", 140, KappaLine::missing);
    ReadableColumns.of(kappas);
    TableView<PairLine> pairs = pairs("pairs", "pairs.none");
    TableView<WhyLine> targeted = table("targeted", "targeted.none");
    column(targeted, "targeted.why", 205, WhyLine::why);
    column(targeted, "targeted.bones", 58, line -> String.valueOf(line.bones()));
    column(targeted, "targeted.agree", 60, line -> String.valueOf(line.agree()));
    column(targeted, "targeted.atgroup", 98, line -> String.valueOf(line.atGroup()));
    column(targeted, "targeted.differ", 60, line -> String.valueOf(line.differ()));
    ReadableColumns.of(targeted);
    TableView<PairLine> targetedPairs = pairs("targeted-pairs", "pairs.none");
    VBox draw =
        card(
            "agreement.draw",
            "agreement.draw.note",
            sentence,
            rank,
            kappas,
            strong("pairs"),
            pairs);
    VBox reason =
        card(
            "agreement.targeted",
            "agreement.targeted.note",
            targeted,
            strong("pairs"),
            targetedPairs);
    reason.getStyleClass().add("agreement-reasons");
    HBox.setHgrow(draw, Priority.ALWAYS);
    HBox.setHgrow(reason, Priority.ALWAYS);
    HBox both = new HBox(draw, reason);
    both.getStyleClass().add("halves");
    VBox.setVgrow(both, Priority.ALWAYS);
    getChildren().add(both);
    agreement
        .shownProperty()
        .addListener(
            (o, was, is) -> {
              sentence.setText(is.sentence());
              kappas.getItems().setAll(is.kappas());
              pairs.getItems().setAll(is.pairs());
              targeted.getItems().setAll(is.targeted());
              targetedPairs.getItems().setAll(is.targetedPairs());
            });
  }

  private VBox card(String title, String note, javafx.scene.Node... inside) {
    Label says = new Label(words.get(note));
    says.getStyleClass().add("note");
    says.setWrapText(true);
    says.setMinHeight(USE_PREF_SIZE);
    VBox card = new VBox(strong(title), says);
    card.getChildren().addAll(inside);
    card.getStyleClass().addAll("card", "agreement-card");
    return card;
  }

  private Label strong(String key) {
    Label label = new Label(words.get(key));
    label.getStyleClass().add("strong");
    return label;
  }

  private TableView<PairLine> pairs(String id, String none) {
    TableView<PairLine> table = table(id, none);
    column(table, "pairs.one", 150, PairLine::one);
    column(table, "pairs.other", 150, PairLine::other);
    column(table, "pairs.bones", 60, line -> String.valueOf(line.bones()));
    ReadableColumns.of(table);
    VBox.setVgrow(table, Priority.ALWAYS);
    return table;
  }

  private <T> TableView<T> table(String id, String none) {
    TableView<T> table = new TableView<>();
    table.setId(id);
    table.setAccessibleText(words.get(id));
    Label empty = new Label(words.get(none));
    empty.setWrapText(true);
    empty.getStyleClass().add("note");
    table.setPlaceholder(empty);
    return table;
  }

  private <T> void column(TableView<T> table, String key, double width, Function<T, String> text) {
    TableColumn<T, String> column = new TableColumn<>(words.get(key));
    column.setCellValueFactory(cell -> new SimpleStringProperty(text.apply(cell.getValue())));
    column.setPrefWidth(width);
    column.setSortable(false);
    table.getColumns().add(column);
  }
}
