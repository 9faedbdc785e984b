package org.comparanda.storage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.measurement.Person;
import org.comparanda.tray.OtherNames;
import org.comparanda.tray.Search;
import org.jdbi.v3.core.Handle;

/** Looks into the index of words that the file keeps of its own rows. */
record SqlSearch(Database database, OtherNames names) implements Search {
  /** A part of the record, as the index names it. */
  private record Part(String word, Kind kind) {}

  private static final List<Part> PARTS =
      List.of(
          new Part("traybone", Kind.BONE),
          new Part("bonecall", Kind.CALL),
          new Part("elementcall", Kind.CALL),
          new Part("reading", Kind.READING),
          new Part("stoprecord", Kind.STOP),
          new Part("associationbone", Kind.TOGETHER),
          new Part("tray", Kind.TRAY),
          new Part("scrap", Kind.SCRAP),
          new Part("lot", Kind.LOT),
          new Part("animal", Kind.ANIMAL),
          new Part("shelfreading", Kind.SHELF_READING),
          new Part("shelfcorrection", Kind.SHELF_READING),
          new Part("acceptedfinding", Kind.FINDING),
          new Part("housetaxon", Kind.NAME),
          new Part("person", Kind.PERSON),
          new Part("oldcard", Kind.OLD_CARD),
          new Part("oldcarddecision", Kind.OLD_CARD),
          new Part("arrival", Kind.ARRIVAL),
          new Part("arrivalinterest", Kind.ARRIVAL),
          new Part("photo", Kind.PICTURE));

  @Override
  public List<Hit> find(String words, int most) {
    SearchQuestion question = SearchQuestion.of(words);
    if (question.terms().isEmpty()) {
      return List.of();
    }
    return database.read(
        h -> {
          List<Person> people = SqlPeople.all(h);
          Map<String, String> nameOf =
              people.stream().collect(Collectors.toMap(p -> p.id().value(), Person::name));
          List<List<Hit>> parts =
              PARTS.stream()
                  .map(
                      part ->
                          find(
                              h,
                              part,
                              question.about(part.word(), names, people),
                              most,
                              id -> nameOf.getOrDefault(id, id)))
                  .toList();
          return shared(parts, most);
        });
  }

  private static List<Hit> find(
      Handle h, Part part, String question, int most, Function<String, String> nameOf) {
    return h
        .createQuery(
            "select t.opens, t.hit_key, t.who, t.content from search_index i"
                + " join search_text t on t.id = i.rowid where search_index match :question"
                + " limit :most")
        .bind("question", question)
        .bind("most", most)
        .map(
            (row, context) ->
                new Hit(
                    part.kind(),
                    Opens.valueOf(row.getString("opens")),
                    row.getString("hit_key"),
                    text(row.getString("content"), id(row.getString("who")), nameOf)))
        .stream()
        .sorted(Comparator.comparing(Hit::key))
        .toList();
  }

  private static String id(String who) {
    return new String(HexFormat.of().parseHex(who), StandardCharsets.UTF_8);
  }

  private static String text(String content, String who, Function<String, String> nameOf) {
    String name = nameOf.apply(who);
    if (who.isEmpty() || name.equals(content)) {
      return content;
    }
    return (content.isEmpty() ? "" : content + " · ") + (name.isBlank() ? who : name);
  }

  /** At most so many hits, every part its fair share, in the order of the parts. */
  private static List<Hit> shared(List<List<Hit>> parts, int most) {
    int[] taken = new int[parts.size()];
    int left = most;
    boolean more = true;
    while (left > 0 && more) {
      more = false;
      for (int i = 0; i < taken.length && left > 0; i++) {
        if (taken[i] < parts.get(i).size()) {
          taken[i]++;
          left--;
          more = true;
        }
      }
    }
    List<Hit> hits = new ArrayList<>();
    for (int i = 0; i < taken.length; i++) {
      hits.addAll(parts.get(i).subList(0, taken[i]));
    }
    return hits;
  }
}
