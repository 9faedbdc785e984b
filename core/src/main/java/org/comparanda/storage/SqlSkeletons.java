package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.BonePlace;
import org.comparanda.register.SkeletonBone;
import org.comparanda.register.Skeletons;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Bones of skeletons that are measured, in the collection's file. */
record SqlSkeletons(Database database, DayBookRows dayBook) implements Skeletons {
  @Override
  public List<SkeletonBone> of(AnimalId animal) {
    return database.read(h -> of(h, animal));
  }

  static List<SkeletonBone> of(Handle h, AnimalId animal) {
    return h.createQuery("select * from skeleton_bone where animal_id = :animal order by id")
        .bind("animal", animal.value())
        .map(SqlSkeletons::bone)
        .list();
  }

  @Override
  public Optional<SkeletonBone> bone(BoneId id) {
    return database.read(
        h ->
            h.createQuery("select * from skeleton_bone where id = :id")
                .bind("id", id.value())
                .map(SqlSkeletons::bone)
                .findOne());
  }

  @Override
  public BoneId number(AnimalId animal, BonePlace place) {
    List<SkeletonBone> known = of(animal);
    Set<BoneId> taken = known.stream().map(SkeletonBone::id).collect(Collectors.toSet());
    String plain =
        animal + " " + place.element() + " " + place.side().name().toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(bone -> bone.place().equals(place))
        .map(SkeletonBone::id)
        .findFirst()
        .orElseGet(
            () ->
                IntStream.iterate(1, n -> n + 1)
                    .mapToObj(n -> new BoneId(n == 1 ? plain : plain + " " + n))
                    .filter(id -> !taken.contains(id))
                    .findFirst()
                    .orElseThrow());
  }

  @Override
  public SkeletonBone save(SkeletonBone bone, PersonId who) {
    return database.write(
        h -> {
          SqlPeople.known(h, dayBook, who);
          return save(h, dayBook.by(who), bone, bone.place().words());
        });
  }

  static SkeletonBone save(Handle h, DayBookRows dayBook, SkeletonBone bone, String words) {
    h.createUpdate(
            "insert into skeleton_bone (id, animal_id, element, side, portion, proximal, distal,"
                + " flags) values (:id, :animal, :element, :side, :portion, :proximal, :distal,"
                + " :flags) on conflict (id) do update set animal_id = excluded.animal_id,"
                + " element = excluded.element,"
                + " side = excluded.side, portion = excluded.portion,"
                + " proximal = excluded.proximal, distal = excluded.distal,"
                + " flags = excluded.flags")
        .bind("id", bone.id().value())
        .bind("animal", bone.animal().value())
        .bind("element", bone.held().element().value())
        .bind("side", bone.held().side().name())
        .bind("portion", bone.held().portion().name())
        .bind("proximal", bone.held().state().proximal().name())
        .bind("distal", bone.held().state().distal().name())
        .bind("flags", Flags.text(bone.held().state().flags()))
        .execute();
    dayBook.wrote(h, Kept.SKELETON_BONE, bone.id().value(), words);
    return bone;
  }

  private static SkeletonBone bone(ResultSet row, StatementContext context) throws SQLException {
    return new SkeletonBone(
        new BoneId(row.getString("id")),
        new AnimalId(row.getString("animal_id")),
        new HeldBone(
            new ElementKey(row.getString("element")),
            Side.valueOf(row.getString("side")),
            Portion.valueOf(row.getString("portion")),
            new BoneState(
                Fusion.valueOf(row.getString("proximal")),
                Fusion.valueOf(row.getString("distal")),
                Flags.of(row.getString("flags")))));
  }
}
