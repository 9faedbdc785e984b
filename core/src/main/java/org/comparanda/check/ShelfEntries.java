package org.comparanda.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonTree;
import org.jspecify.annotations.Nullable;

/** All rows of a shelf, with the words that the room knows; asked by one thread at a time. */
public final class ShelfEntries {
  private final List<BoneEntry> all;
  private final Protocol protocol;
  private final TaxonTree tree;
  private final BooleanSupplier stopped;
  private @Nullable Map<ElementKey, ElementSpread> spreads;

  /**
   * @param all rows in the order of the table or collection
   * @param protocol elements, measurements and part rules that count as known
   * @param tree taxa that count as known
   */
  public ShelfEntries(List<BoneEntry> all, Protocol protocol, TaxonTree tree) {
    this(List.copyOf(all), protocol, tree, () -> false);
  }

  private ShelfEntries(
      List<BoneEntry> all, Protocol protocol, TaxonTree tree, BooleanSupplier stopped) {
    this.all = all;
    this.protocol = protocol;
    this.tree = tree;
    this.stopped = stopped;
  }

  /** The same rows, whose long checks end early when it says yes. */
  ShelfEntries stoppedBy(BooleanSupplier other) {
    return new ShelfEntries(all, protocol, tree, other);
  }

  boolean stopped() {
    return stopped.getAsBoolean();
  }

  public List<BoneEntry> all() {
    return all;
  }

  public Protocol protocol() {
    return protocol;
  }

  public TaxonTree tree() {
    return tree;
  }

  /** How the bones of each element vary: reckoned once, when first asked for. */
  Map<ElementKey, ElementSpread> spreads() {
    if (spreads == null) {
      spreads = ElementSpread.of(this);
    }
    return spreads;
  }

  /** The rows of a collection. */
  public static ShelfEntries of(Shelf shelf, Protocol protocol, TaxonTree tree) {
    List<BoneEntry> rows = new ArrayList<>();
    for (Animal animal : shelf.animals()) {
      for (ShelfBone bone : animal.bones()) {
        Set<Flag> flags = new HashSet<>(animal.flags());
        flags.addAll(bone.flags());
        rows.add(
            new BoneEntry(
                rows.size() + 1L,
                animal.id().value(),
                animal.taxon(),
                bone.element(),
                bone.side(),
                bone.portion(),
                flags,
                animal.ageClass(),
                animal.remarks(),
                bone.values()));
      }
    }
    return new ShelfEntries(rows, protocol, tree);
  }

  /** The rows of each animal, in the order of the first. */
  Map<String, List<BoneEntry>> byAnimal() {
    return grouped(all, BoneEntry::animal);
  }

  static <K> Map<K, List<BoneEntry>> grouped(List<BoneEntry> rows, Function<BoneEntry, K> key) {
    Map<K, List<BoneEntry>> groups = new LinkedHashMap<>();
    rows.forEach(row -> groups.computeIfAbsent(key.apply(row), k -> new ArrayList<>()).add(row));
    return groups;
  }

  /** The bone in words, or "all" for several different ones. */
  static String bone(List<BoneEntry> rows) {
    Set<String> bones = new LinkedHashSet<>();
    rows.forEach(row -> bones.add(row.bone()));
    return bones.size() == 1 ? bones.iterator().next() : "all";
  }
}
