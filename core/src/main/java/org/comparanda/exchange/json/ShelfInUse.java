package org.comparanda.exchange.json;

import java.util.List;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;

/**
 * The shelf that bones were compared with.
 *
 * @param animals how many
 * @param taxa how many
 * @param measurements codes; {@code element.code} where the shelf has several elements
 * @param priors named
 * @param method as asked for
 */
public record ShelfInUse(
    int animals, int taxa, List<String> measurements, String priors, String method) {
  public ShelfInUse {
    measurements = List.copyOf(measurements);
  }

  public static ShelfInUse of(Shelf shelf, String priors, String method) {
    List<ShelfBone> bones =
        shelf.animals().stream().map(Animal::bones).flatMap(List::stream).toList();
    long elements = bones.stream().map(ShelfBone::element).distinct().count();
    TreeSet<String> names = new TreeSet<>();
    for (ShelfBone bone : bones) {
      String before = elements > 1 ? prefix(bone.element()) : "";
      bone.values().keySet().forEach(code -> names.add(before + code));
    }
    return new ShelfInUse(
        shelf.animals().size(), shelf.taxa().size(), List.copyOf(names), priors, method);
  }

  private static String prefix(ElementKey element) {
    return element + ".";
  }
}
