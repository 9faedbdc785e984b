package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.TraitAnswer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Rows of calls, in and out; lists are joined by a bar. */
final class CallRows {
  private CallRows() {}

  static Call append(Handle h, DayBookRows dayBook, Call call, Beside beside) {
    SqlPeople.known(h, dayBook, call.person());
    long id = next(h, "bone_call");
    Grounds grounds = call.grounds();
    h.createUpdate(
            "insert into bone_call (id, bone_id, taxon, qualifier, person_id, at, basis,"
                + " saw_suggestion, as_written, grounds, compared_with, why, traits, standing,"
                + " answers) values (:id, :bone, :taxon, :qualifier, :person, :at, :basis, :saw,"
                + " :written, :how, :compared, :why, :traits, :kind, :answers)")
        .bind("id", id)
        .bind("bone", call.bone().value())
        .bind("taxon", call.taxon().value())
        .bind("qualifier", call.qualifier().name())
        .bind("person", call.person().value())
        .bind("at", call.at().toString())
        .bind("basis", call.basis())
        .bind("saw", call.sawSuggestion() ? 1 : 0)
        .bind("written", given(grounds.asWritten()))
        .bind(
            "how",
            Optional.of(grounds.how()).filter(h1 -> h1 != Grounds.How.NOT_SAID).map(Enum::name))
        .bind("compared", joined(grounds.comparedWith().stream().map(AnimalId::value)))
        .bind("why", given(grounds.why()))
        .bind(
            "traits", joined(grounds.traits().stream().map(t -> t.trait() + "=" + t.seen().name())))
        .bind("kind", Optional.of(call.kind()).filter(k -> k != Call.Kind.CALL).map(Enum::name))
        .bind("answers", call.answers())
        .execute();
    dayBook.wrote(h, Kept.CALL, id, "");
    Call appended = call.withId(id);
    if (!beside.equals(Beside.nothing())) {
      append(h, appended, beside);
    }
    return appended;
  }

  private static void append(Handle h, Call call, Beside beside) {
    h.createUpdate(
            "insert into beside_call (call_id, bone_id, named, ruled_out, typicality)"
                + " values (:call, :bone, :named, :ruledOut, :typicality)")
        .bind("call", call.id())
        .bind("bone", call.bone().value())
        .bind("named", names(beside.named()))
        .bind("ruledOut", names(beside.ruledOut()))
        .bind("typicality", beside.typicality())
        .execute();
  }

  static Call call(ResultSet row, StatementContext context) throws SQLException {
    long answered = row.getLong("answers");
    Optional<Long> answers = row.wasNull() ? Optional.empty() : Optional.of(answered);
    Grounds grounds =
        new Grounds(
            Optional.ofNullable(row.getString("grounds"))
                .map(Grounds.How::valueOf)
                .orElse(Grounds.How.NOT_SAID),
            parts(row, "compared_with").map(AnimalId::new).toList(),
            Optional.ofNullable(row.getString("why")).orElse(""),
            parts(row, "traits").map(CallRows::trait).toList(),
            Optional.ofNullable(row.getString("as_written")).orElse(""));
    return new Call(
        row.getLong("id"),
        new BoneId(row.getString("bone_id")),
        new TaxonName(row.getString("taxon")),
        Qualifier.valueOf(row.getString("qualifier")),
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getString("basis"),
        row.getInt("saw_suggestion") == 1,
        grounds,
        Optional.ofNullable(row.getString("standing"))
            .map(Call.Kind::valueOf)
            .orElse(Call.Kind.CALL),
        answers);
  }

  static Beside beside(ResultSet row, StatementContext context) throws SQLException {
    double typicality = row.getDouble("typicality");
    Optional<Double> fitted = row.wasNull() ? Optional.empty() : Optional.of(typicality);
    return new Beside(
        parts(row, "named").map(TaxonName::new).toList(),
        parts(row, "ruled_out").map(TaxonName::new).toList(),
        fitted);
  }

  static ElementCall append(Handle h, DayBookRows dayBook, ElementCall call) {
    SqlPeople.known(h, dayBook, call.person());
    long id = next(h, "element_call");
    h.createUpdate(
            "insert into element_call (id, bone_id, element, side, portion, person_id, at, basis,"
                + " look) values (:id, :bone, :element, :side, :portion, :person, :at, :basis,"
                + " :look)")
        .bind("id", id)
        .bind("bone", call.bone().value())
        .bind("element", call.element().value())
        .bind("side", call.side().name())
        .bind("portion", call.portion().name())
        .bind("person", call.person().value())
        .bind("at", call.at().toString())
        .bind("basis", call.basis())
        .bind("look", call.look())
        .execute();
    dayBook.wrote(h, Kept.ELEMENT_CALL, id, "");
    if (call.look().isEmpty()) {
      holds(h, dayBook, call, id);
    }
    return call.withId(id);
  }

  private static void holds(Handle h, DayBookRows dayBook, ElementCall call, long id) {
    h.createUpdate(
            "update tray_bone set element = :element, side = :side, portion = :portion"
                + " where id = :bone")
        .bind("element", call.element().value())
        .bind("side", call.side().name())
        .bind("portion", call.portion().name())
        .bind("bone", call.bone().value())
        .execute();
    dayBook.wrote(h, Kept.BONE, call.bone().value(), "by element call " + id);
  }

  static ElementCall elementCall(ResultSet row, StatementContext context) throws SQLException {
    long looked = row.getLong("look");
    Optional<Long> look = row.wasNull() ? Optional.empty() : Optional.of(looked);
    return new ElementCall(
        row.getLong("id"),
        new BoneId(row.getString("bone_id")),
        new ElementKey(row.getString("element")),
        Side.valueOf(row.getString("side")),
        Portion.valueOf(row.getString("portion")),
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getString("basis"),
        look);
  }

  /** The next running number of a table. */
  static long next(Handle h, String table) {
    return h.createQuery("select coalesce(max(id), 0) + 1 from " + table).mapTo(Long.class).one();
  }

  private static TraitAnswer trait(String text) {
    int equals = text.lastIndexOf('=');
    return new TraitAnswer(
        text.substring(0, equals), TraitAnswer.Seen.valueOf(text.substring(equals + 1)));
  }

  private static Optional<String> given(String text) {
    return Optional.of(text).filter(t -> !t.isBlank());
  }

  private static Optional<String> joined(Stream<String> parts) {
    return given(parts.collect(Collectors.joining("|")));
  }

  private static String names(List<TaxonName> names) {
    return names.stream().map(TaxonName::value).collect(Collectors.joining("|"));
  }

  private static Stream<String> parts(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getString(column)).stream()
        .flatMap(text -> Arrays.stream(text.split("\\|")))
        .filter(part -> !part.isBlank());
  }
}
