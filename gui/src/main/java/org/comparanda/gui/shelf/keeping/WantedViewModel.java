package org.comparanda.gui.shelf.keeping;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.stock.Wanted;

/** Which animals to prepare next. */
public final class WantedViewModel {
  private final KeeperRoom room;
  private final Executor work;
  private final Executor ui;
  private final ObservableList<Wanted.Entry> listed = FXCollections.observableArrayList();
  private final AtomicLong asked = new AtomicLong();
  private final StringProperty sentence = new SimpleStringProperty("");

  public WantedViewModel(KeeperRoom room, Executor work, Executor ui) {
    this.room = room;
    this.work = work;
    this.ui = ui;
  }

  /** The largest gain first. */
  public ObservableList<Wanted.Entry> listed() {
    return listed;
  }

  public StringProperty sentenceProperty() {
    return sentence;
  }

  KeeperRoom room() {
    return room;
  }

  /** Puts the list on paper; gives the number of pages. */
  public interface Printing {
    int pages(List<Wanted.Entry> entries) throws IOException;
  }

  /** Prints the list as it is shown. */
  public void print(Printing printing) {
    List<Wanted.Entry> entries = List.copyOf(listed);
    work.execute(
        () -> {
          String said;
          try {
            said = room.words().get("wanted.printed", printing.pages(entries));
          } catch (IOException failed) {
            said =
                room.words()
                    .get(
                        "wanted.not.printed",
                        room.words().said(String.valueOf(failed.getMessage())));
          }
          String told = said;
          ui.execute(() -> sentence.set(told));
        });
  }

  /** Computes the list anew, off the window's thread. */
  public void look() {
    long turn = asked.incrementAndGet();
    sentence.set(room.words().get("wanted.running"));
    work.execute(
        () -> {
          if (turn != asked.get()) {
            return;
          }
          List<Wanted.Entry> entries =
              Wanted.withDefaults()
                  .of(
                      room.animals().shelf(),
                      room.watch("wanted.computing", sentence, ui, () -> turn != asked.get()));
          ui.execute(
              () -> {
                if (turn == asked.get()) {
                  listed.setAll(entries);
                  sentence.set(room.words().get(entries.isEmpty() ? "wanted.none" : "wanted.help"));
                }
              });
        });
  }

  /** Ends computing: the page was left. */
  public void stop() {
    asked.incrementAndGet();
  }
}
