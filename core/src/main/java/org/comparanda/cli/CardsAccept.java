package org.comparanda.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Side;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.oldcards.AcceptedCard;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.Proposal;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayId;
import org.comparanda.tray.WrittenName;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Accepts cards one by one, or all plain ones of a shape. */
@Command(
    name = "accept",
    description = {
      "Accept what cards seem to say: each becomes a bone on a tray with a call by eye in the name of",
      "the person who accepts. Name the cards, or accept all plain ones of one shape."
    },
    mixinStandardHelpOptions = true)
final class CardsAccept implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "CARD", arity = "0..*", description = "Numbers of cards.")
  private List<Long> numbers = new ArrayList<>();

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--shape", paramLabel = "TEXT", description = "As cards shapes lists it.")
  private @Nullable String shape;

  @Option(names = "--tray", required = true, paramLabel = "ID", description = "Onto which tray.")
  private String tray = "";

  @Option(names = "--lot", paramLabel = "LOT", description = "Lot of a new tray; else its key.")
  private @Nullable String lot;

  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who accepts.")
  private String person = "";

  @Option(
      names = "--taxon",
      paramLabel = "NAME",
      description = "The name, where the card was read wrongly or not; in open nomenclature.")
  private @Nullable String taxon;

  @Option(names = "--element", paramLabel = "E", description = "The bone, likewise.")
  private @Nullable String element;

  @Option(names = "--side", paramLabel = "SIDE", description = "The side, likewise.")
  private @Nullable Side side;

  CardsAccept(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (numbers.isEmpty() == (shape == null)) {
      throw new CannotDo("Name cards, or one shape by --shape. Nothing was accepted.");
    }
    Protocol protocol = ReferenceTables.shipped().protocol();
    try (Collection opened = collection.open(terminal)) {
      CardParser parser = CardText.parser(opened);
      List<CardOnFile> chosen = shape == null ? numbered(opened) : ofShape(opened, parser, shape);
      Tray onto = onto(opened);
      List<AcceptedCard> accepted = new ArrayList<>();
      for (CardOnFile card : chosen) {
        if (card.accepted()) {
          throw new CannotDo(
              "Card " + card.card().number() + " was accepted before. Nothing was stored.");
        }
        Proposal said = corrected(parser.read(card.card().text()), protocol);
        accepted.add(
            AcceptedCard.of(
                    card.card(), said, onto, new PersonId(person), terminal.clock().instant())
                .fold(
                    sound -> sound,
                    none -> {
                      throw new CannotDo(none.reason() + " Nothing was stored. " + none.remedy());
                    }));
      }
      opened.oldCards().accept(accepted);
      int bones = accepted.stream().mapToInt(a -> a.bones().size()).sum();
      terminal.say(
          "Accepted "
              + Count.of(accepted.size(), "card")
              + ": "
              + Count.of(bones, "bone")
              + " with a call on "
              + onto.name()
              + ".");
    }
    return Terminal.FINE;
  }

  private List<CardOnFile> numbered(Collection opened) {
    return numbers.stream()
        .distinct()
        .map(
            n ->
                opened
                    .oldCards()
                    .card(n)
                    .orElseThrow(
                        () -> new CannotDo("There is no card " + n + ". Nothing was stored.")))
        .toList();
  }

  private List<CardOnFile> ofShape(Collection opened, CardParser parser, String wanted) {
    if (taxon != null || element != null || side != null) {
      throw new CannotDo(
          "--taxon, --element and --side are for cards accepted by number. Nothing was stored.");
    }
    List<CardOnFile> same =
        opened.oldCards().all().stream()
            .filter(c -> c.latest().isEmpty())
            .filter(c -> parser.read(c.card().text()).shape().equals(wanted))
            .toList();
    List<CardOnFile> plain =
        same.stream().filter(c -> parser.read(c.card().text()).plain()).toList();
    if (plain.isEmpty()) {
      throw new CannotDo(
          "No plain card waits with the shape \""
              + wanted
              + "\". Nothing was stored. See cards shapes.");
    }
    if (plain.size() < same.size()) {
      terminal.note(
          Count.of(same.size() - plain.size(), "card")
              + " of this shape must be looked at singly and still wait.");
    }
    return plain;
  }

  private Proposal corrected(Proposal read, Protocol protocol) {
    Proposal said = read;
    if (taxon != null) {
      WrittenName name =
          WrittenName.read(taxon)
              .fold(
                  written -> written,
                  none -> {
                    throw CannotDo.because(none);
                  });
      said = said.withTaxon(name.taxon(), name.qualifier());
    }
    if (element != null) {
      ElementKey key = new ElementKey(element);
      if (protocol.element(key).isEmpty()) {
        throw new CannotDo("No element \"" + element + "\" is known. Nothing was stored.");
      }
      said = said.withElement(key);
    }
    return side == null ? said : said.withSide(side);
  }

  private Tray onto(Collection opened) {
    return opened.trays().all().stream()
        .filter(t -> t.id().value().equals(tray))
        .findFirst()
        .orElseGet(
            () ->
                new Tray(
                    new TrayId(tray),
                    lot == null ? tray : lot,
                    tray,
                    BoneAge.NOT_KNOWN,
                    "",
                    "",
                    Tray.State.WAITING));
  }
}
