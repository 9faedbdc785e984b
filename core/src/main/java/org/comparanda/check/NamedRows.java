package org.comparanda.check;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How many rows a list of findings names: a list that names many sound rows is not read. Findings
 * about a whole taxon or column name none.
 *
 * @param rows bones that were checked
 * @param named those that a finding is about
 */
public record NamedRows(long rows, long named) {
  /** Bones of the entries that a finding names, by their animal and bone. */
  public static NamedRows of(List<BoneEntry> entries, Collection<Finding> findings) {
    Set<String> named = new HashSet<>();
    findings.forEach(
        f -> f.animal().ifPresent(animal -> named.add(key(animal, f.bone().orElse("all")))));
    long rows =
        entries.stream()
            .filter(
                e ->
                    named.contains(key(e.animal(), "all"))
                        || named.contains(key(e.animal(), e.bone())))
            .count();
    return new NamedRows(entries.size(), rows);
  }

  private static String key(String animal, String bone) {
    return animal + "\n" + bone;
  }

  /** In words, with the share in per cent. */
  public String sentence() {
    return rows == 0
        ? "No row was checked."
        : String.format(
            Locale.ROOT, "Rows named: %d of %d (%.1f %%).", named, rows, 100.0 * named / rows);
  }
}
