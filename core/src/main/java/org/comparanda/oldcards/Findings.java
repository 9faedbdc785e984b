package org.comparanda.oldcards;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Qualifier;

/** What was found on one card so far; two answers to one question are a doubt and no answer. */
final class Findings {
  private final Protocol protocol;
  private final List<Piece> pieces = new ArrayList<>();
  private final List<String> doubts = new ArrayList<>();
  private final List<String> taken = new ArrayList<>();
  private final Set<String> taxa = new LinkedHashSet<>();
  private final Set<Qualifier> qualifiers = EnumSet.noneOf(Qualifier.class);
  private final Set<String> elements = new LinkedHashSet<>();
  private final Set<Side> sides = EnumSet.noneOf(Side.class);
  private final Set<Portion> portions = EnumSet.noneOf(Portion.class);
  private final Set<Flag> flags = EnumSet.noneOf(Flag.class);
  private final Set<Integer> counts = new LinkedHashSet<>();
  private final Set<String> places = new LinkedHashSet<>();
  private final Map<MeasurementCode, WrittenLength> lengths = new TreeMap<>();

  Findings(Protocol protocol) {
    this.protocol = protocol;
  }

  void phrase(Piece piece) {
    pieces.add(piece);
    switch (piece.part()) {
      case TAXON -> taxa.add(piece.meaning());
      case QUALIFIER -> qualifiers.add(Qualifier.valueOf(piece.meaning()));
      case ELEMENT -> elements.add(piece.meaning());
      case SIDE -> sides.add(Side.valueOf(piece.meaning()));
      case PORTION -> portions.add(Portion.valueOf(piece.meaning()));
      case FLAG -> flags.add(Flag.valueOf(piece.meaning()));
      case HUMAN ->
          doubts.add(
              "The card names human remains. Nothing is made of it: show it to the person responsible.");
      default -> {}
    }
  }

  void place(Piece piece) {
    pieces.add(piece);
    places.add(piece.meaning());
  }

  void count(Piece piece) {
    pieces.add(piece);
    counts.add(Integer.valueOf(piece.meaning()));
  }

  /** A question mark belongs to the name that it touches; anywhere else it is a doubt. */
  void questionMark(Token sign) {
    boolean behindName =
        !pieces.isEmpty()
            && pieces.get(pieces.size() - 1).part() == Part.TAXON
            && pieces.get(pieces.size() - 1).to() >= sign.from() - 1;
    if (behindName || pieces.isEmpty()) {
      qualifiers.add(Qualifier.UNCERTAIN);
      pieces.add(new Piece(sign.from(), sign.to(), Part.QUALIFIER, Qualifier.UNCERTAIN.name()));
    } else {
      leftOver(sign);
      doubts.add("A question mark stands on the card, and not by the name.");
    }
  }

  void leftOver(Token token) {
    pieces.add(new Piece(token.from(), token.to(), Part.LEFT_OVER, token.text()));
  }

  void lengthOfNothing(Token number, Token unit) {
    String text = number.text() + " " + unit.text();
    pieces.add(new Piece(number.from(), unit.to(), Part.LEFT_OVER, text));
    doubts.add("\"" + text + "\" is a length, but it is not said of what.");
  }

  void measured(Token code, Token number, Optional<String> unit, int to) {
    String written = number.text() + unit.map(u -> " " + u).orElse("");
    pieces.add(new Piece(code.from(), to, Part.MEASUREMENT, code.text() + " " + written));
    if (number.text().matches("\\d+,\\d{3}") || !number.text().matches("\\d+([.,]\\d+)?")) {
      doubts.add("\"" + number.text() + "\" could mean thousands or decimals; it was not read.");
      return;
    }
    double value = Double.parseDouble(number.text().replace(',', '.'));
    LengthUnit read = unit.flatMap(LengthUnit::ofSymbol).orElse(LengthUnit.MILLIMETRE);
    if (unit.isEmpty()) {
      taken.add(code.text() + " has no unit: taken as mm.");
    }
    if (value <= 0) {
      doubts.add(code.text() + " is not above zero; it was not read.");
    } else if (lengths.put(
            new MeasurementCode(code.text()), new WrittenLength(written, Length.of(value, read)))
        != null) {
      doubts.add(code.text() + " stands twice on the card.");
    }
  }

  Proposal proposal() {
    Optional<String> taxon = only(taxa, "names");
    Optional<ElementKey> element = only(elements, "bones").map(ElementKey::new);
    Optional<Qualifier> qualifier = only(qualifiers, "qualifiers");
    Optional<Side> side = only(sides, "sides");
    Optional<Portion> portion = only(portions, "portions");
    Optional<Integer> count = only(counts, "counts");
    Optional<String> place = only(places, "places");
    if (taxon.isEmpty() && taxa.isEmpty()) {
      doubts.add("No name was read.");
    }
    if (element.isEmpty() && elements.isEmpty()) {
      doubts.add("It was not read which bone it is.");
    }
    element.ifPresent(this::measurable);
    boolean axial =
        element
            .flatMap(protocol::element)
            .map(Element::symmetry)
            .equals(Optional.of(Symmetry.AXIAL));
    if (side.isEmpty() && !axial) {
      taken.add("No side is said: not known.");
    }
    if (portion.isEmpty()) {
      taken.add("No portion is said: whole.");
    }
    if (count.filter(n -> n < 1).isPresent()) {
      doubts.add("The count is not above zero.");
    }
    if (count.orElse(1) > 1 && !lengths.isEmpty()) {
      doubts.add("Several pieces share one measurement; it is not said whose it is.");
    }
    return new Proposal(
        taxon.map(TaxonName::new),
        qualifier.orElse(Qualifier.NONE),
        element,
        side.orElse(axial ? Side.AXIAL : Side.NOT_KNOWN),
        portion.orElse(Portion.WHOLE),
        flags,
        Math.max(1, count.orElse(1)),
        lengths,
        place.orElse(""),
        pieces,
        taken,
        doubts);
  }

  private void measurable(ElementKey element) {
    for (MeasurementCode code : lengths.keySet()) {
      if (protocol.measurement(element, code).isEmpty()) {
        doubts.add(code + " isn't measured on the element " + element + ".");
      }
    }
  }

  private <T> Optional<T> only(Set<T> found, String what) {
    if (found.size() > 1) {
      doubts.add(
          "Two "
              + what
              + " were read: "
              + String.join(", ", found.stream().map(String::valueOf).toList())
              + ".");
    }
    return found.size() == 1 ? found.stream().findFirst() : Optional.empty();
  }
}
