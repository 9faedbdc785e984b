package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.suggestion.AnimalPoint;
import org.comparanda.taxon.TaxonName;

/**
 * The comparative animals of one element as dots. They are the same from reading to reading, so
 * each strip is made once and handed out again: the very same list. For one thread.
 */
final class ShelfDots {
  private final List<AnimalPoint> points;
  private final Words words;
  private final Numbers numbers;
  private final Map<TaxonName, List<AnimalPoint>> byTaxon;
  private final Map<TaxonName, Map<MeasurementCode, List<Dot>>> strips = new HashMap<>();

  ShelfDots(List<AnimalPoint> points, Words words, Numbers numbers) {
    this.points = List.copyOf(points);
    this.words = words;
    this.numbers = numbers;
    this.byTaxon = points.stream().collect(Collectors.groupingBy(AnimalPoint::taxon));
  }

  /** Dots of these points: these very ones where they are of them already. */
  ShelfDots of(List<AnimalPoint> others) {
    return others.equals(points) ? this : new ShelfDots(others, words, numbers);
  }

  /** How many animals there are of each taxon. */
  Map<TaxonName, Integer> animals() {
    return byTaxon.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().size()));
  }

  /** Whether any animal has the measurement. */
  boolean any(MeasurementCode code) {
    return points.stream().anyMatch(a -> a.values().containsKey(code));
  }

  /** One dot for each animal of the taxon that has the measurement, in the order of the points. */
  List<Dot> strip(TaxonName taxon, MeasurementCode code) {
    return strips
        .computeIfAbsent(taxon, t -> new HashMap<>())
        .computeIfAbsent(code, c -> dots(byTaxon.getOrDefault(taxon, List.of()), c));
  }

  private List<Dot> dots(List<AnimalPoint> animals, MeasurementCode code) {
    List<Dot> dots = new ArrayList<>();
    for (AnimalPoint animal : animals) {
      Double mm = animal.values().get(code);
      if (mm != null) {
        dots.add(new Dot(mm, animal.animal().value(), tip(animal, code, mm)));
      }
    }
    return List.copyOf(dots);
  }

  private String tip(AnimalPoint animal, MeasurementCode code, double mm) {
    String place =
        animal.drawer().map(d -> words.get("dot.drawer", d)).orElse(words.get("dot.nodrawer"));
    return words.get(
        "dot",
        animal.animal().value(),
        animal.taxon().value(),
        place,
        code.value(),
        numbers.fixed(mm, 1));
  }
}
