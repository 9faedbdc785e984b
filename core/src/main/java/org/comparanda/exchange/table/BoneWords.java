package org.comparanda.exchange.table;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;

/** The words for side, portion, flags and fusion, read from the cells of one row. */
final class BoneWords {
  private final ProblemList problems;

  BoneWords(ProblemList problems) {
    this.problems = problems;
  }

  Optional<Side> side(long row, String header, String cell) {
    return word(row, header, cell, Side.values());
  }

  Optional<Portion> portion(long row, String header, String cell) {
    return word(row, header, cell, Portion.values());
  }

  Optional<Fusion> fusion(long row, String header, String cell) {
    return word(row, header, cell, Fusion.values());
  }

  Set<Flag> flags(long row, String header, String cell) {
    EnumSet<Flag> flags = EnumSet.noneOf(Flag.class);
    for (String part : NumberText.missing(cell) ? new String[0] : cell.split("\\|", -1)) {
      word(row, header, part.strip(), Flag.values()).ifPresent(flags::add);
    }
    return flags;
  }

  private <E extends Enum<E>> Optional<E> word(long row, String header, String cell, E[] words) {
    if (NumberText.missing(cell)) {
      return Optional.empty();
    }
    String wanted = plain(cell);
    Optional<E> found =
        Arrays.stream(words).filter(w -> plain(w.name()).equals(wanted)).findFirst();
    if (found.isEmpty()) {
      problems.cell(row, header, cell, "not a word of the protocol here", "Write " + list(words));
    }
    return found;
  }

  private static <E extends Enum<E>> String list(E[] words) {
    List<String> names = Arrays.stream(words).map(w -> shown(w.name())).toList();
    return String.join(", ", names.subList(0, names.size() - 1))
        + " or "
        + names.get(names.size() - 1)
        + ".";
  }

  private static String shown(String name) {
    return name.equals("CANT_SEE") ? "can't see" : name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[_' \u2019-]", "");
  }
}
