package org.comparanda.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.measurement.BoneId;
import org.comparanda.tray.Association;
import org.comparanda.tray.Associations;
import org.jdbi.v3.core.Handle;

/** Bones found together, in the collection's file. */
record SqlAssociations(Database database, DayBookRows dayBook) implements Associations {
  @Override
  public List<Association> all() {
    return database.read(
        h -> {
          Map<Long, List<BoneId>> bones = new TreeMap<>();
          h.createQuery("select bone_id, association from association_bone order by bone_id")
              .map(
                  (row, context) ->
                      bones
                          .computeIfAbsent(row.getLong("association"), none -> new ArrayList<>())
                          .add(new BoneId(row.getString("bone_id"))))
              .list();
          return bones.entrySet().stream()
              .map(one -> new Association(one.getKey(), one.getValue()))
              .toList();
        });
  }

  @Override
  public Optional<Association> of(BoneId bone) {
    return database.read(h -> id(h, bone).map(id -> association(h, id)));
  }

  @Override
  public Association join(BoneId one, BoneId other) {
    return database.write(
        h -> {
          long joined =
              id(h, one)
                  .or(() -> id(h, other))
                  .orElseGet(
                      () ->
                          h.createQuery(
                                  "select coalesce(max(association), 0) + 1 from association_bone")
                              .mapTo(Long.class)
                              .one());
          id(h, other)
              .ifPresent(
                  old ->
                      h.createUpdate(
                              "update association_bone set association = :joined"
                                  + " where association = :old")
                          .bind("joined", joined)
                          .bind("old", old)
                          .execute());
          put(h, one, joined);
          put(h, other, joined);
          Association now = association(h, joined);
          for (BoneId bone : now.bones()) {
            dayBook.wrote(h, Kept.ASSOCIATION, bone.value(), text(now));
          }
          return now;
        });
  }

  @Override
  public void part(BoneId bone) {
    database.write(
        h -> {
          Optional<Long> left = id(h, bone);
          left.ifPresent(
              id -> {
                remove(h, bone);
                List<BoneId> rest = association(h, id).bones();
                if (rest.size() == 1) {
                  remove(h, rest.get(0));
                }
              });
          return left;
        });
  }

  private static String text(Association association) {
    return String.join(" ", association.bones().stream().map(BoneId::value).toList());
  }

  private static void put(Handle h, BoneId bone, long association) {
    h.createUpdate(
            "insert into association_bone (bone_id, association) values (:bone, :association)"
                + " on conflict (bone_id) do update set association = excluded.association")
        .bind("bone", bone.value())
        .bind("association", association)
        .execute();
  }

  private void remove(Handle h, BoneId bone) {
    h.createUpdate("delete from association_bone where bone_id = :bone")
        .bind("bone", bone.value())
        .execute();
    dayBook.wrote(h, Kept.ASSOCIATION, bone.value(), "taken out");
  }

  private static Optional<Long> id(Handle h, BoneId bone) {
    return h.createQuery("select association from association_bone where bone_id = :bone")
        .bind("bone", bone.value())
        .mapTo(Long.class)
        .findOne();
  }

  private static Association association(Handle h, long id) {
    return new Association(
        id,
        h.createQuery("select bone_id from association_bone where association = :id order by 1")
            .bind("id", id)
            .mapTo(String.class)
            .map(BoneId::new)
            .list());
  }
}
