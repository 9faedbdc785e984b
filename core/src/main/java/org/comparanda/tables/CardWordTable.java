package org.comparanda.tables;

import java.util.Arrays;
import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.Protocol;
import org.comparanda.oldcards.CardWord;
import org.comparanda.oldcards.CardWords;
import org.comparanda.oldcards.Part;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Qualifier;

/** Reads the vocabulary of old cards; every value must be known where it points. */
public final class CardWordTable {
  private CardWordTable() {}

  /** The words packed with the program. Errors: {@link BrokenTable}. */
  public static CardWords shipped(Protocol protocol, TaxonTree tree) {
    return read(TableFile.shipped("card-words.json"), protocol, tree);
  }

  static CardWords read(TableFile file, Protocol protocol, TaxonTree tree) {
    List<CardWord> words =
        file.rows("words").stream().map(row -> word(row, protocol, tree)).toList();
    return CardWords.of(words, protocol, tree);
  }

  private static CardWord word(TableRow row, Protocol protocol, TaxonTree tree) {
    row.text("source");
    Part part = row.word("part", Part.class);
    String value = row.textOrEmpty("value");
    boolean known =
        switch (part) {
          case TAXON -> tree.taxon(new TaxonName(row.text("value"))).isPresent();
          case ELEMENT -> protocol.element(new ElementKey(row.text("value"))).isPresent();
          case QUALIFIER -> isOne(value, Qualifier.values());
          case SIDE -> isOne(value, Side.values());
          case PORTION -> isOne(value, Portion.values());
          case FLAG -> isOne(value, Flag.values());
          case UNIT -> LengthUnit.ofSymbol(value).isPresent();
          case COUNT, PLACE, PASSED_OVER, HUMAN -> value.isEmpty();
          case MEASUREMENT, LEFT_OVER -> false;
        };
    if (!known) {
      throw row.broken("value", "\"" + value + "\" is not known as " + part);
    }
    return new CardWord(part, value, row.texts("words"));
  }

  private static <E extends Enum<E>> boolean isOne(String value, E[] words) {
    return Arrays.stream(words).anyMatch(w -> w.name().equals(value));
  }
}
