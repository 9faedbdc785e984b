package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.sizeestimate.FittedLine;

/** Whether the line can be trusted. Takes about a second, so only while somebody looks. */
public final class TrustViewModel {
  private final SizeDeskViewModel desk;
  private final Room room;
  private final Executor work;
  private final Executor ui;
  private final ObservableList<CheckLine> lines = FXCollections.observableArrayList();
  private Optional<FittedLine> told = Optional.empty();
  private boolean looking;

  TrustViewModel(SizeDeskViewModel desk, Room room, Executor work, Executor ui) {
    this.desk = desk;
    this.room = room;
    this.work = work;
    this.ui = ui;
    desk.shownProperty().addListener((o, was, is) -> tell());
  }

  /** What was looked at and found; empty until it is known. */
  public ObservableList<CheckLine> lines() {
    return lines;
  }

  /** Somebody looks. */
  public void open() {
    looking = true;
    tell();
  }

  /** Nobody looks any more. */
  public void close() {
    looking = false;
  }

  private void tell() {
    Optional<FittedLine> line = desk.shownProperty().get().line();
    if (!looking || line.equals(told)) {
      return;
    }
    told = line;
    lines.clear();
    line.ifPresent(
        fitted ->
            work.execute(
                () -> {
                  List<CheckLine> found = TrustText.of(fitted, room.words(), room.locale());
                  ui.execute(
                      () -> {
                        if (told.equals(line)) {
                          lines.setAll(found);
                        }
                      });
                }));
  }
}
