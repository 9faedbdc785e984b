package org.comparanda.gui.capture;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Lists whose entries are chosen by their number, from 1 on. */
public final class Numbered {
  private Numbered() {}

  /** The entry of that number, if digits were typed and there is one. */
  public static <T> Optional<T> of(List<T> entries, String typed) {
    int number = number(typed).orElse(0);
    return number >= 1 && number <= entries.size()
        ? Optional.of(entries.get(number - 1))
        : Optional.empty();
  }

  /** A number of at most four digits. */
  public static Optional<Integer> number(String typed) {
    return typed.matches("[0-9]{1,4}") ? Optional.of(Integer.parseInt(typed)) : Optional.empty();
  }

  /** The entries with their numbers, as a question shows them. */
  public static <T> List<Question.Choice> choices(List<T> entries, Function<T, String> text) {
    return IntStream.range(0, entries.size())
        .mapToObj(i -> new Question.Choice(Integer.toString(i + 1), text.apply(entries.get(i))))
        .toList();
  }
}
