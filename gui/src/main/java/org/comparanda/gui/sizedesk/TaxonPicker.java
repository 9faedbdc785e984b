package org.comparanda.gui.sizedesk;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.CheckBoxTreeItem;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.control.cell.CheckBoxTreeCell;
import javafx.scene.layout.StackPane;
import org.comparanda.gui.text.Words;
import org.comparanda.taxon.TaxonName;

/** The taxon tree with ticks: who feeds the line. A tick at a group ticks all below. */
final class TaxonPicker extends StackPane {
  private final SizeDeskViewModel model;
  private final TreeView<TaxonBranch> tree = new TreeView<>();
  private boolean settling;

  TaxonPicker(SizeDeskViewModel model, Words words) {
    this.model = model;
    tree.setId("taxa");
    tree.setAccessibleText(words.get("ask.taxa"));
    tree.setCellFactory(view -> new BranchCell(words));
    getChildren().add(tree);
    model.taxaProperty().addListener((o, was, is) -> plant(is));
    model.askProperty().addListener((o, was, is) -> tick(is));
    plant(model.taxaProperty().get());
  }

  private void plant(Optional<TaxonBranch> branch) {
    settling = true;
    branch.ifPresentOrElse(b -> tree.setRoot(item(b)), () -> tree.setRoot(null));
    settling = false;
    tick(model.askProperty().get());
  }

  private CheckBoxTreeItem<TaxonBranch> item(TaxonBranch branch) {
    CheckBoxTreeItem<TaxonBranch> item = new CheckBoxTreeItem<>(branch);
    branch.below().forEach(b -> item.getChildren().add(item(b)));
    item.setExpanded(true);
    if (branch.below().isEmpty()) {
      item.selectedProperty().addListener((o, was, is) -> chosen());
    }
    return item;
  }

  private void chosen() {
    if (!settling && tree.getRoot() instanceof CheckBoxTreeItem<TaxonBranch> root) {
      Set<TaxonName> taxa = new HashSet<>();
      collect(root, taxa);
      model.choose(taxa);
    }
  }

  private static void collect(CheckBoxTreeItem<TaxonBranch> item, Set<TaxonName> taxa) {
    if (item.isLeaf() && item.isSelected()) {
      taxa.addAll(item.getValue().taxa());
    }
    for (TreeItem<TaxonBranch> child : item.getChildren()) {
      collect((CheckBoxTreeItem<TaxonBranch>) child, taxa);
    }
  }

  private void tick(Optional<SizeAsk> ask) {
    settling = true;
    ask.ifPresent(
        a -> {
          if (tree.getRoot() instanceof CheckBoxTreeItem<TaxonBranch> root) {
            tick(root, a.taxa());
          }
        });
    settling = false;
  }

  private static void tick(CheckBoxTreeItem<TaxonBranch> item, Set<TaxonName> taxa) {
    if (item.isLeaf()) {
      item.setSelected(taxa.containsAll(item.getValue().taxa()));
    }
    item.getChildren().forEach(child -> tick((CheckBoxTreeItem<TaxonBranch>) child, taxa));
  }

  private static final class BranchCell extends CheckBoxTreeCell<TaxonBranch> {
    private final Words words;

    BranchCell(Words words) {
      this.words = words;
    }

    @Override
    public void updateItem(TaxonBranch branch, boolean empty) {
      super.updateItem(branch, empty);
      getStyleClass().removeAll("taxon");
      if (!empty && branch != null) {
        String name = branch.name().map(TaxonName::value).orElse(words.get("ask.taxa.all"));
        setText(words.get("ask.taxa.count", name, branch.animals()));
        if (branch.below().isEmpty()) {
          getStyleClass().add("taxon");
        }
      }
    }
  }
}
