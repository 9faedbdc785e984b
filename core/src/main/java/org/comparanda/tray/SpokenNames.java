package org.comparanda.tray;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementNames;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * Names as people say them: elements and sides in English and German, taxa by their common names
 * and synonyms. A name counts from its third letter on.
 */
public final class SpokenNames implements OtherNames {
  private static final int FEWEST_LETTERS = 3;
  private static final int MOST_NAMES = 60;
  private static final Map<String, String> SIDES =
      Map.of("left", "links linker linke linkes", "right", "rechts rechter rechte rechtes");

  private final List<Said> all = new ArrayList<>();

  /** One name, and what stands in the record for it. */
  private record Said(FoldedWords name, Set<String> written) {}

  public SpokenNames(List<Element> elements, TaxonTree tree) {
    SIDES.forEach((side, words) -> all.add(new Said(FoldedWords.of(words), Set.of(side))));
    for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      ElementNames names = ElementNames.in(language);
      elements.forEach(
          e -> all.add(new Said(FoldedWords.of(names.of(e)), Set.of(e.key().value()))));
    }
    Map<TaxonName, Set<String>> sameTaxon = new LinkedHashMap<>();
    tree.taxa()
        .forEach(
            t ->
                sameTaxon
                    .computeIfAbsent(tree.accepted(t.name()), none -> new LinkedHashSet<>())
                    .add(t.name().value()));
    for (Taxon taxon : tree.taxa()) {
      Set<String> written = sameTaxon.getOrDefault(tree.accepted(taxon.name()), Set.of());
      if (written.size() > 1) {
        all.add(new Said(FoldedWords.of(taxon.name().value()), written));
      }
      all.add(new Said(FoldedWords.of(taxon.commonName()), written));
    }
  }

  @Override
  public List<String> of(FoldedWords asked) {
    if (asked.length() < FEWEST_LETTERS) {
      return List.of();
    }
    return all.stream()
        .filter(said -> asked.standIn(said.name()))
        .flatMap(said -> said.written().stream())
        .distinct()
        .limit(MOST_NAMES)
        .toList();
  }
}
