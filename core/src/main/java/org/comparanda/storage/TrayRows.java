package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Priority;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Rows of trays and of their bones, in and out. */
final class TrayRows {
  private TrayRows() {}

  static void save(Handle h, DayBookRows dayBook, Tray tray) {
    boolean ordinary = tray.priority().equals(Priority.ordinary());
    h.createUpdate(
            "insert into tray (id, position, lot, name, age, provenance, hazards, state, priority,"
                + " priority_reason, requested_by, assigned_to)"
                + " values (:id, (select coalesce(max(position), 0) + 1 from tray), :lot,"
                + " :name, :age, :provenance, :hazards, :state, :rank, :reason, :requested,"
                + " :assigned) on conflict (id) do update set lot = excluded.lot,"
                + " name = excluded.name, age = excluded.age,"
                + " provenance = excluded.provenance, hazards = excluded.hazards,"
                + " state = excluded.state, priority = excluded.priority,"
                + " priority_reason = excluded.priority_reason,"
                + " requested_by = excluded.requested_by, assigned_to = excluded.assigned_to")
        .bind("id", tray.id().value())
        .bind("lot", tray.lot())
        .bind("name", tray.name())
        .bind("age", tray.age().name())
        .bind("provenance", tray.own().provenance())
        .bind("hazards", tray.own().hazards())
        .bind("state", tray.state().name())
        .bind("rank", ordinary ? Optional.empty() : Optional.of(tray.priority().rank()))
        .bind("reason", ordinary ? Optional.empty() : Optional.of(tray.priority().reason()))
        .bind("requested", ordinary ? Optional.empty() : Optional.of(tray.priority().requestedBy()))
        .bind("assigned", tray.assignedTo().map(PersonId::value))
        .execute();
    dayBook.wrote(h, Kept.TRAY, tray.id().value(), "");
  }

  static Tray tray(ResultSet row, StatementContext context) throws SQLException {
    int rank = row.getInt("priority");
    Priority priority =
        row.wasNull()
            ? Priority.ordinary()
            : new Priority(rank, text(row, "priority_reason"), text(row, "requested_by"));
    return new Tray(
        new TrayId(row.getString("id")),
        row.getString("lot"),
        row.getString("name"),
        BoneAge.valueOf(row.getString("age")),
        new LotNotes(row.getString("provenance"), row.getString("hazards")),
        new LotNotes(text(row, "lot_provenance"), text(row, "lot_hazards")),
        Tray.State.valueOf(row.getString("state")),
        priority,
        Optional.ofNullable(row.getString("assigned_to")).map(PersonId::new));
  }

  /** A bone that is set aside stays so; {@link SqlStops} alone open it again. */
  static void save(Handle h, DayBookRows dayBook, TrayBone bone) {
    Keeping keeping = bone.keeping();
    h.createUpdate(
            "insert into tray_bone (id, position, tray_id, animal_id, element, side,"
                + " portion, proximal, distal, flags, standing, remarks, goes_to, restricted)"
                + " values (:id, (select coalesce(max(position), 0) + 1 from tray_bone), :tray,"
                + " :animal, :element, :side, :portion, :proximal, :distal, :flags, :standing,"
                + " :remarks, :goesTo, :restricted)"
                + " on conflict (id) do update set tray_id = excluded.tray_id,"
                + " animal_id = excluded.animal_id, element = excluded.element,"
                + " side = excluded.side, portion = excluded.portion,"
                + " proximal = excluded.proximal, distal = excluded.distal,"
                + " flags = excluded.flags, remarks = excluded.remarks,"
                + " standing = case when tray_bone.standing = 'STOPPED' then 'STOPPED'"
                + " else excluded.standing end,"
                + " goes_to = excluded.goes_to, restricted = excluded.restricted")
        .bind("id", bone.id().value())
        .bind("tray", bone.tray().value())
        .bind("animal", bone.animal().map(AnimalId::value))
        .bind("element", bone.element().value())
        .bind("side", bone.side().name())
        .bind("portion", bone.portion().name())
        .bind("proximal", bone.state().proximal().name())
        .bind("distal", bone.state().distal().name())
        .bind("flags", Flags.text(bone.state().flags()))
        .bind("standing", bone.standing().name())
        .bind("remarks", bone.remarks())
        .bind("goesTo", Optional.of(keeping.goesTo()).filter(place -> !place.isBlank()))
        .bind(
            "restricted",
            keeping.access() == Keeping.Access.RESTRICTED ? Optional.of(1) : Optional.empty())
        .execute();
    if (bone.standing() == TrayBone.Standing.STOPPED) {
      SqlKeptAnswers.wipe(h, bone.id());
    }
    dayBook.wrote(h, Kept.BONE, bone.id().value(), "");
  }

  static TrayBone bone(ResultSet row, StatementContext context) throws SQLException {
    return new TrayBone(
        new BoneId(row.getString("id")),
        new TrayId(row.getString("tray_id")),
        Optional.ofNullable(row.getString("animal_id")).map(AnimalId::new),
        new ElementKey(row.getString("element")),
        Side.valueOf(row.getString("side")),
        Portion.valueOf(row.getString("portion")),
        new BoneState(
            Fusion.valueOf(row.getString("proximal")),
            Fusion.valueOf(row.getString("distal")),
            Flags.of(row.getString("flags"))),
        TrayBone.Standing.valueOf(row.getString("standing")),
        row.getString("remarks"),
        new Keeping(
            text(row, "goes_to"),
            row.getInt("restricted") == 1 ? Keeping.Access.RESTRICTED : Keeping.Access.OPEN));
  }

  private static String text(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getString(column)).orElse("");
  }
}
