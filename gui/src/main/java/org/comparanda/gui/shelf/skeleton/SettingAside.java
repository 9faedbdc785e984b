package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.SkeletonBone;
import org.comparanda.tray.Stop;
import org.comparanda.tray.Stops;

/** Sets a bone of a skeleton aside as possibly human, as the Bench does with one of a tray. */
record SettingAside(ElementBones bones) {
  /** Nobody has to find their name first: STOP never waits. */
  private static final String NO_NAME = "not named";

  /** Sets it aside at once, with everything half-typed of it. */
  void put(Side inHand, String who) {
    Side side = bones.sides().contains(inHand) ? inHand : bones.sides().get(0);
    PersonId person = new PersonId(who.isBlank() ? NO_NAME : who.strip());
    SkeletonBone bone = bones.bone(side);
    if (bones.said(side).isEmpty()) {
      bones.room().skeletons().save(bone, person);
    }
    stops().setAside(bone.id(), person, bones.room().reading().clock().instant(), "");
  }

  /** Which bones of the skeleton are set aside, and how one is opened again. */
  String opening() {
    List<String> aside =
        bones.room().skeletons().of(bones.card().id()).stream()
            .map(SkeletonBone::id)
            .filter(this::aside)
            .map(BoneId::value)
            .toList();
    return bones.room().words().get("skeleton.aside", String.join(", ", aside));
  }

  private boolean aside(BoneId bone) {
    List<Stop> said = stops().of(bone);
    return !said.isEmpty() && said.get(said.size() - 1).kind() == Stop.Kind.SET_ASIDE;
  }

  private Stops stops() {
    return bones.room().stops();
  }
}
