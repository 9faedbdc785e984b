package org.comparanda.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.WhichBone;
import org.comparanda.measurement.Protocol;

/** Reads the key "Which bone is it?"; every choice leads somewhere. */
final class WhichBoneTable {
  private WhichBoneTable() {}

  /** Errors: {@link BrokenTable} naming file, row and field. */
  static WhichBone read(TableFile file, Protocol protocol) {
    List<TableRow> rows = file.rows("questions");
    ProtocolTables.requireOnce(rows, "id");
    Set<String> ids = new HashSet<>();
    rows.forEach(row -> ids.add(row.text("id")));
    return new WhichBone(
        file.text("first"), rows.stream().map(row -> question(row, ids, protocol)).toList());
  }

  private static WhichBone.Question question(TableRow row, Set<String> ids, Protocol protocol) {
    return new WhichBone.Question(
        row.text("id"),
        row.text(row.said("question")),
        row.textOrEmpty(row.said("hint")),
        row.rows("choices").stream().map(choice -> choice(choice, ids, protocol)).toList());
  }

  private static WhichBone.Choice choice(TableRow row, Set<String> ids, Protocol protocol) {
    String shows = row.textOrEmpty("shows");
    return new WhichBone.Choice(
        row.text(row.said("text")),
        shows.isEmpty() ? Optional.empty() : Optional.of(new ElementKey(shows)),
        next(row, ids, protocol));
  }

  private static WhichBone.Next next(TableRow row, Set<String> ids, Protocol protocol) {
    if (row.has("element")) {
      return new WhichBone.Found(ProtocolTables.knownElement(row, protocol));
    }
    if (row.has("stop")) {
      return new WhichBone.Stop(
          row.word("stop", WhichBone.Reason.class), row.text(row.said("sentence")));
    }
    if (!ids.contains(row.text("question"))) {
      throw row.broken("question", "\"" + row.text("question") + "\" is no question of the key");
    }
    return new WhichBone.Ask(row.text("question"));
  }
}
