package org.comparanda.gui.sizedesk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.taxon.TaxonName;

/** The size of a bone whose taxon is not decided: each candidate's line, mixed by its share. */
public final class UndecidedViewModel {
  private final SizeDeskViewModel desk;
  private final Room room;
  private final Executor work;
  private final Executor ui;
  private final ObservableList<ShareRow> rows = FXCollections.observableArrayList();
  private final ObjectProperty<AnswerText> answer =
      new SimpleObjectProperty<>(new AnswerText("", "", List.of()));
  private Optional<SizeAsk> asked = Optional.empty();
  private boolean looking;

  UndecidedViewModel(SizeDeskViewModel desk, Room room, Executor work, Executor ui) {
    this.desk = desk;
    this.room = room;
    this.work = work;
    this.ui = ui;
    desk.taxaProperty().addListener((o, was, is) -> offer(is));
    desk.askProperty().addListener((o, was, is) -> mix());
  }

  /** Somebody looks. */
  public void open() {
    looking = true;
    mix();
  }

  /** Nobody looks any more. */
  public void close() {
    looking = false;
  }

  /** The candidates: every taxon that could have a line. */
  public ObservableList<ShareRow> rows() {
    return rows;
  }

  /** The mixture in words, or what is missing. */
  public ReadOnlyObjectProperty<AnswerText> answerProperty() {
    return answer;
  }

  /** Gives every ticked taxon the same share. */
  public void equalShares() {
    Set<TaxonName> ticked = desk.askProperty().get().map(SizeAsk::taxa).orElse(Set.of());
    rows.forEach(r -> r.shareProperty().set(ticked.contains(r.taxon()) ? "1" : ""));
    mix();
  }

  /** Shares stay with their taxa. */
  private void offer(Optional<TaxonBranch> branch) {
    Map<TaxonName, String> before = new HashMap<>();
    rows.forEach(r -> before.put(r.taxon(), r.shareProperty().get()));
    rows.setAll(
        branch.stream()
            .flatMap(b -> b.leaves().entrySet().stream())
            .map(e -> row(e.getKey(), e.getValue(), before.getOrDefault(e.getKey(), "")))
            .toList());
    mix();
  }

  private static ShareRow row(TaxonName taxon, int animals, String share) {
    ShareRow row = new ShareRow(taxon, animals);
    row.shareProperty().set(share);
    return row;
  }

  /** Takes over the shares as typed, and mixes. */
  public void mix() {
    if (!looking) {
      return;
    }
    asked = desk.askProperty().get();
    rows.forEach(r -> r.say(""));
    Map<TaxonName, Double> shares = new HashMap<>();
    for (ShareRow row : rows) {
      String typed = row.shareProperty().get().strip().replace(',', '.');
      if (typed.matches("\\d{1,6}([.]\\d{1,6})?") && Double.parseDouble(typed) > 0) {
        shares.put(row.taxon(), Double.parseDouble(typed));
      } else if (!typed.isEmpty() && !typed.matches("0([.]0*)?")) {
        say("undecided.not", row.shareProperty().get(), "undecided.not.remedy");
        return;
      }
    }
    if (shares.isEmpty()) {
      say("undecided.waiting", "", "undecided.waiting.remedy");
      return;
    }
    asked.ifPresent(a -> mix(a, shares));
  }

  private void say(String reason, String quoted, String remedy) {
    answer.set(
        new AnswerText(room.words().get(reason, quoted), room.words().get(remedy), List.of()));
  }

  private void mix(SizeAsk ask, Map<TaxonName, Double> shares) {
    Optional<BoneInHand> bone = InHand.of(ask).bones().stream().findFirst();
    if (bone.isEmpty() || ask.reading().isEmpty()) {
      say(
          "undecided.reading",
          desk.study().quantity(ask.from()).name(),
          "undecided.reading.remedy");
      return;
    }
    Shelf shelf = desk.study().shelf();
    Quantity wanted = desk.study().quantity(ask.predict());
    work.execute(
        () -> {
          SizeAsk single = ask.withHand(ask.reading(), List.of(), ask.own());
          UndecidedTaxon size =
              SizeFinding.desk(shelf, room.protocol(), ask)
                  .undecided(single.question(ask.taxa()), bone.get(), shares);
          UndecidedText text = new UndecidedText(room.words(), room.locale(), wanted);
          ui.execute(
              () -> {
                if (asked.equals(Optional.of(ask))) {
                  answer.set(text.mixture(size));
                  rows.forEach(
                      r ->
                          Optional.ofNullable(size.byTaxon().get(r.taxon()))
                              .ifPresent(e -> r.say(text.own(e))));
                }
              });
        });
  }
}
