package org.comparanda.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.CardParser;
import org.comparanda.oldcards.Proposal;
import org.comparanda.storage.Collection;
import org.comparanda.tables.CardWordTable;
import org.comparanda.tables.ReferenceTables;

/** An old card in lines: as found, what was read, what was left over, what is doubtful. */
final class CardText {
  private CardText() {}

  /** Reads cards by the names that the house uses now. */
  static CardParser parser(Collection opened) {
    ReferenceTables tables = HouseTables.of(opened);
    return new CardParser(CardWordTable.shipped(tables.protocol(), tables.taxa()));
  }

  static List<String> lines(CardOnFile each, CardParser parser) {
    Proposal said = parser.read(each.card().text());
    List<String> lines = new ArrayList<>();
    lines.add(
        "card "
            + each.card().number()
            + " ("
            + each.card().source()
            + ", row "
            + each.card().row()
            + "), "
            + each.latest()
                .map(d -> word(d.kind()) + " by " + d.person().value() + ": " + d.note())
                .orElse("waiting"));
    lines.add("  as found: " + each.card().text());
    lines.add("  read: " + read(said));
    if (!said.leftOver().isEmpty()) {
      lines.add("  left over: " + String.join(" | ", said.leftOver()));
    }
    said.taken().forEach(t -> lines.add("  taken: " + t));
    said.doubts().forEach(d -> lines.add("  look: " + d));
    return lines;
  }

  private static String read(Proposal said) {
    List<String> parts = new ArrayList<>();
    said.taxon().ifPresent(t -> parts.add((t + " " + said.qualifier().sign()).strip()));
    said.element().ifPresent(e -> parts.add(e.value()));
    if (said.side() != Side.NOT_KNOWN) {
      parts.add(word(said.side()));
    }
    if (said.portion() != Portion.WHOLE) {
      parts.add(word(said.portion()));
    }
    said.flags().stream().map(CardText::word).sorted().forEach(parts::add);
    if (said.count() > 1) {
      parts.add(said.count() + " pieces");
    }
    said.lengths().forEach((code, length) -> parts.add(code + " " + length.asWritten()));
    if (!said.place().isEmpty()) {
      parts.add("from \"" + said.place() + "\"");
    }
    return parts.isEmpty() ? "nothing" : String.join(", ", parts);
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
