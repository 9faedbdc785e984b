package org.comparanda.gui.oldcards;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.CardList;
import org.comparanda.measurement.PersonId;
import org.comparanda.oldcards.CardDecision;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.OldCard;
import org.comparanda.oldcards.Proposal;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.TrayId;
import org.comparanda.tray.WrittenName;

/** State of the screen of the old cards; the collection is read and written on {@code work}. */
public final class OldCardsViewModel {
  private final CardsRoom room;
  private final Executor work;
  private final Executor ui;
  private final ObservableList<CardOnFile> listed = FXCollections.observableArrayList();
  private final ObjectProperty<Which> which = new SimpleObjectProperty<>(Which.WAITING);
  private final ObjectProperty<Optional<CardShown>> shown =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty person = new SimpleStringProperty("");
  private final StringProperty tray = new SimpleStringProperty("old-cards");
  private final StringProperty taxon = new SimpleStringProperty("");
  private final StringProperty element = new SimpleStringProperty("");
  private final StringProperty reason = new SimpleStringProperty("");
  private final ObjectProperty<Charset> encoding =
      new SimpleObjectProperty<>(StandardCharsets.UTF_8);
  private final StringProperty columnOfTexts = new SimpleStringProperty("");
  private final StringProperty notice = new SimpleStringProperty("");
  private final CardShapes shapes;
  private List<CardOnFile> all = List.of();
  private Optional<Long> sought = Optional.empty();

  /** Which cards are listed. */
  public enum Which {
    WAITING,
    ACCEPTED,
    REFUSED,
    ALL
  }

  public OldCardsViewModel(CardsRoom room, Executor work, Executor ui) {
    this.room = room;
    shapes = new CardShapes(room::parser);
    this.work = work;
    this.ui = ui;
  }

  /** Looks at the collection again. */
  public void refresh() {
    work.execute(
        () -> {
          List<CardOnFile> now = everyCard();
          ui.execute(() -> take(now));
        });
  }

  private void take(List<CardOnFile> now) {
    all = now;
    list();
  }

  private void list() {
    listed.setAll(all.stream().filter(this::isListed).toList());
    open(
        listed.stream()
            .filter(c -> sought.filter(n -> n == c.card().number()).isPresent())
            .findFirst()
            .or(() -> listed.stream().findFirst()));
  }

  /** Opens this card as soon as the cards are looked at again, wherever it is listed. */
  public void seek(long number) {
    sought = Optional.of(number);
    which.set(Which.ALL);
  }

  private boolean isListed(CardOnFile card) {
    String is = card.latest().map(d -> d.kind().name()).orElse(Which.WAITING.name());
    return which.get() == Which.ALL || which.get().name().equals(is);
  }

  public ObservableList<CardOnFile> listed() {
    return listed;
  }

  public ReadOnlyObjectProperty<Which> whichProperty() {
    return which;
  }

  /** Lists these cards. */
  public void show(Which other) {
    sought = Optional.empty();
    which.set(other);
    list();
  }

  public ReadOnlyObjectProperty<Optional<CardShown>> shownProperty() {
    return shown;
  }

  /** Who accepts or refuses. */
  public StringProperty personProperty() {
    return person;
  }

  /** The tray that bones go to. */
  public StringProperty trayProperty() {
    return tray;
  }

  /** A name in place of the one that was read; empty takes what was read. */
  public StringProperty taxonProperty() {
    return taxon;
  }

  /** A bone in place of the one that was read; empty takes what was read. */
  public StringProperty elementProperty() {
    return element;
  }

  /** Why a card is refused. */
  public StringProperty reasonProperty() {
    return reason;
  }

  /** How lists are saved that are brought in. */
  public ObjectProperty<Charset> encodingProperty() {
    return encoding;
  }

  /** The column of a table that holds the texts; empty where each line is a card. */
  public StringProperty columnProperty() {
    return columnOfTexts;
  }

  /** What came of the last step. */
  public StringProperty noticeProperty() {
    return notice;
  }

  /** What an element is called. */
  String named(ElementKey key) {
    return room.protocol().element(key).map(Element::name).orElse(key.value());
  }

  /** Keys of all elements. */
  public List<String> elements() {
    return room.protocol().elements().stream().map(e -> e.key().value()).sorted().toList();
  }

  /** Opens a card. */
  public void open(Optional<CardOnFile> card) {
    taxon.set("");
    element.set("");
    shown.set(card.map(this::shown));
  }

  private CardShown shown(CardOnFile card) {
    Proposal said = room.parser().read(card.card().text());
    return new CardShown(card, said, (int) shapes.alike(all, said).count());
  }

  /** All cards, their texts read; not for the thread of the window. */
  private List<CardOnFile> everyCard() {
    List<CardOnFile> now = room.cards().all();
    shapes.learn(now);
    return now;
  }

  /** Brings a list in, one card a line, or one a row where the column of a table is named. */
  public void bringIn(Path list) {
    CardList saved = CardList.withDefaults().withEncoding(encoding.get());
    String column = columnOfTexts.get().strip();
    work.execute(
        () -> {
          Outcome<List<OldCard>> read =
              column.isEmpty() ? saved.lines(list) : saved.column(list, column, Optional.empty());
          String said =
              read.fold(
                  cards -> room.words().get("brought", room.cards().add(cards), cards.size()),
                  none -> room.words().said(none.reason()));
          List<CardOnFile> now = everyCard();
          ui.execute(
              () -> {
                take(now);
                notice.set(said);
              });
        });
  }

  /** Accepts the open card, with what the person says in place of what was read. */
  public void accept() {
    shown
        .get()
        .filter(s -> !s.card().accepted())
        .ifPresent(
            s ->
                corrected(s.said())
                    .fold(
                        said -> accept(List.of(s.card()), Optional.of(said)),
                        none -> notice(room.words().said(none.reason()))));
  }

  /** Accepts all plain cards of the open card's shape. */
  public void acceptAlike() {
    shown.get().ifPresent(s -> accept(shapes.alike(all, s.said()).toList(), Optional.empty()));
  }

  private Outcome<Proposal> corrected(Proposal read) {
    Outcome<Proposal> named =
        taxon.get().isBlank()
            ? Outcome.of(read)
            : WrittenName.read(taxon.get())
                .then(name -> Outcome.of(read.withTaxon(name.taxon(), name.qualifier())));
    if (element.get().isBlank()) {
      return named;
    }
    ElementKey key = new ElementKey(element.get().strip().toLowerCase(Locale.ROOT));
    return room.protocol().element(key).isEmpty()
        ? Outcome.none(room.words().get("element.unknown", element.get()), "")
        : named.then(said -> Outcome.of(said.withElement(key)));
  }

  private boolean notice(String text) {
    notice.set(text);
    return false;
  }

  /** Whether it could be begun. */
  private boolean accept(List<CardOnFile> cards, Optional<Proposal> corrected) {
    if (person.get().isBlank() || tray.get().isBlank()) {
      return notice(room.words().get("who.missing"));
    }
    PersonId by = new PersonId(person.get().strip());
    TrayId onto = new TrayId(tray.get().strip());
    work.execute(
        () -> {
          String said = new CardAccepting(room).stored(cards, corrected, by, onto);
          List<CardOnFile> now = everyCard();
          ui.execute(
              () -> {
                take(now);
                notice.set(said);
              });
        });
    return true;
  }

  /** Refuses the open card with the reason given. */
  public void refuse() {
    Optional<CardShown> open = shown.get().filter(s -> !s.card().accepted());
    if (open.isEmpty()) {
      return;
    }
    if (person.get().isBlank() || reason.get().isBlank()) {
      notice.set(room.words().get("reason.missing"));
      return;
    }
    CardDecision decision =
        new CardDecision(
            open.get().card().card().number(),
            CardDecision.Kind.REFUSED,
            new PersonId(person.get().strip()),
            room.clock().instant(),
            reason.get().strip());
    work.execute(
        () -> {
          room.cards().refuse(decision);
          List<CardOnFile> now = everyCard();
          ui.execute(
              () -> {
                reason.set("");
                take(now);
                notice.set(room.words().get("refused", decision.card()));
              });
        });
  }
}
