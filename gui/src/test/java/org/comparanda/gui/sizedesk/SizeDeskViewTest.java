package org.comparanda.gui.sizedesk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.CheckBoxTreeItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextArea;
import javafx.scene.control.TreeView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.AnimalId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class SizeDeskViewTest {
  private final List<AnimalId> opened = new ArrayList<>();
  private Optional<Path> place = Optional.empty();
  private Optional<Path> tree = Optional.empty();
  private Optional<Path> equations = Optional.empty();
  private SizeDeskViewModel model;

  @Start
  void open(Stage stage) {
    model =
        new SizeDeskViewModel(
            SizeDeskViewModelTest.room(InventedShelf.withFemora()), Runnable::run, Runnable::run);
    SizeDeskView view =
        new SizeDeskView(
            model,
            Words.of("sizedesk", Locale.ENGLISH),
            Locale.ENGLISH,
            "invented",
            new FileDialogs(
                name -> place.map(folder -> folder.resolve(name)), () -> tree, () -> equations));
    view.setOnAnimal(opened::add);
    StackPane dressed = new StackPane(view);
    dressed.getStylesheets().add("/org/comparanda/gui/app/light.css");
    stage.setScene(new Scene(dressed, 1234, 768));
    stage.show();
  }

  @Test
  void readingTypedWithEnterGivesTheEstimateWithItsInterval(FxRobot robot) {
    robot.clickOn("#reading").write("400").type(KeyCode.ENTER);
    String sentence = robot.lookup("#answer-sentence").queryAs(Label.class).getText();
    assertTrue(sentence.startsWith("Body length "), sentence);
    assertTrue(sentence.endsWith("(95 % for one animal)."), sentence);
  }

  @Test
  void untickingATaxonTakesItOutOfTheLine(FxRobot robot) {
    robot.interact(() -> leaf(robot, "Gavialis").setSelected(false));
    assertEquals(
        java.util.Set.of(InventedShelf.BROAD), model.askProperty().get().orElseThrow().taxa());
  }

  @Test
  void otherMeasurementChosenFromTheListIsAsked(FxRobot robot) {
    robot.interact(() -> list(robot, "predict").setValue(model.study().quantity("mandible.ML")));
    robot.interact(() -> list(robot, "from").setValue(list(robot, "from").getItems().get(0)));
    assertEquals("mandible.ML", model.askProperty().get().orElseThrow().predict());
    assertEquals("body_length", model.askProperty().get().orElseThrow().from());
  }

  @Test
  void plotAndTableAreSavedWhereThePersonSays(FxRobot robot, @TempDir Path folder) {
    place = Optional.of(folder);
    MenuButton save = robot.lookup("#save").queryAs(MenuButton.class);
    robot.interact(() -> save.getItems().forEach(item -> item.fire()));
    for (String name :
        List.of("size-line.svg", "size-line.pdf", "size-line.png", "size-line.csv")) {
      assertTrue(Files.exists(folder.resolve(name)), name);
    }
    assertTrue(robot.lookup("#saved").queryAs(Label.class).getText().contains("size-line.csv"));
  }

  @Test
  void aFolderThatIsNotThereIsSaid(FxRobot robot, @TempDir Path folder) {
    place = Optional.of(folder.resolve("gone"));
    MenuButton save = robot.lookup("#save").queryAs(MenuButton.class);
    robot.interact(() -> save.getItems().get(0).fire());
    String said = robot.lookup("#saved").queryAs(Label.class).getText();
    assertTrue(said.startsWith("Not saved"), said);
  }

  @Test
  void methodsParagraphIsCopied(FxRobot robot) {
    robot.clickOn("#page-methods").clickOn("#copy");
    String text = robot.lookup("#methods").queryAs(TextArea.class).getText();
    assertTrue(text.contains("n = 12 animals"), text);
    robot.interact(
        () -> assertEquals(text, javafx.scene.input.Clipboard.getSystemClipboard().getString()));
  }

  @Test
  void moreIsBehindAButtonAndALevelTypedThereIsTaken(FxRobot robot) {
    assertFalse(robot.lookup("#more-panel").query().isVisible());
    robot.clickOn("#more");
    robot.doubleClickOn("#level").write("90").type(KeyCode.ENTER);
    assertEquals(0.9, model.askProperty().get().orElseThrow().choice().level(), 1e-12); // decimals
  }

  @Test
  void aPointIsReachedAndOpenedFromTheKeyboard(FxRobot robot) {
    robot.interact(() -> robot.lookup("#plot").query().requestFocus());
    robot.type(KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.ENTER);
    // The second smallest jaw is of B-1.
    assertEquals(List.of(new AnimalId("B-1")), opened);
    assertTrue(robot.lookup("#plot").query().getAccessibleHelp().contains("drawer K 1"));
  }

  @Test
  void everyControlOfTheQuestionHasAName(FxRobot robot) {
    robot.clickOn("#more").clickOn("#further-add");
    for (String id :
        List.of(
            "predict",
            "from",
            "reading",
            "own",
            "taxa",
            "method",
            "scale",
            "level",
            "correction",
            "beside",
            "further-0",
            "further-reading-0",
            "further-remove-0")) {
      String name = robot.lookup("#" + id).query().getAccessibleText();
      assertTrue(name != null && !name.isBlank(), id);
    }
  }

  @Test
  void everyPageOpens(FxRobot robot) {
    for (String page : List.of("diagnostics", "equations", "undecided", "methods", "plot")) {
      robot.clickOn("#page-" + page);
      assertTrue(robot.lookup("#" + page).tryQuery().isPresent(), page);
    }
  }

  @SuppressWarnings("unchecked") // the screen's own lists
  private static ComboBox<Quantity> list(FxRobot robot, String id) {
    return robot.lookup("#" + id).queryAs(ComboBox.class);
  }

  @SuppressWarnings("unchecked") // the screen's own tree
  private static CheckBoxTreeItem<TaxonBranch> leaf(FxRobot robot, String name) {
    TreeView<TaxonBranch> tree = robot.lookup("#taxa").queryAs(TreeView.class);
    return tree.getRoot().getChildren().stream()
        .filter(item -> item.getValue().name().orElseThrow().value().startsWith(name))
        .map(item -> (CheckBoxTreeItem<TaxonBranch>) item)
        .findFirst()
        .orElseThrow();
  }
}
