package org.comparanda.gui.shelf.skeleton;

import javafx.scene.layout.VBox;
import org.comparanda.gui.capture.StopCard;
import org.comparanda.gui.shelf.keeping.Written;

/** What to do with a skeleton of which a bone may be human, in place of its measuring. */
final class AsideCard extends VBox {
  AsideCard(SkeletonViewModel model) {
    VBox card = StopCard.aside(model.room().reading().words(), model.room().contactCard());
    model
        .bones()
        .map(bones -> Written.wrapped(new SettingAside(bones).opening(), "note"))
        .ifPresent(card.getChildren()::add);
    getChildren().add(card);
  }
}
