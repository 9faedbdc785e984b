package org.comparanda.gui.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.gui.app.DemoRoom;
import org.comparanda.house.Grant;
import org.comparanda.house.HouseRule;
import org.comparanda.house.Right;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.Queue;
import org.comparanda.secondlook.Waiting;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** The demo collection some weeks on: three invented people called and looked. All invented. */
final class LookedRoom {
  private static final PersonId ANN = new PersonId("ann");
  private static final PersonId BEN = new PersonId("ben");
  private static final PersonId CAT = new PersonId("cat");
  private static final List<String> NAMES =
      List.of("Ovis aries", "Capra hircus", "Cervus elaphus", "Ovis aries", "Dama dama");

  /** Nobody called it yet; the house shows what the numbers say only afterwards. */
  private static final String UNCALLED = "K-202";

  private LookedRoom() {}

  static Collection make(ReferenceTables tables) throws IOException {
    Collection room =
        DemoRoom.open(Files.createTempDirectory("pictures-looked"), tables, DemoCollection.CLOCK);
    room.people().save(new Person(ANN, "Invented Ann"));
    room.people().save(new Person(BEN, "Invented Ben"));
    room.people().save(new Person(CAT, "Invented Cat"));
    room.people().save(new Person(CAT, "")); // asked to be blanked
    room.grants()
        .append(
            new Grant(
                0, ANN, Right.KEEPER, Grant.Kind.GIVEN, ANN, DemoCollection.CLOCK.instant(), ""));
    set(room, RuleName.SECOND_LOOK_EVERY, "2", "more of the heap is to be looked at again");
    set(room, RuleName.CONTACT_CARD, "Invented Ann, room 3, extension 000 (invented)", "");
    set(room, RuleName.CALL_FIRST, "on", "so that nobody is led");
    int i = 0;
    for (Tray tray : room.trays().all()) {
      for (TrayBone bone : room.trays().bonesOf(tray.id())) {
        if (bone.id().value().equals(UNCALLED)) {
          continue;
        }
        String name = NAMES.get(i % NAMES.size());
        Beside said =
            new Beside(
                List.of(new TaxonName(i % 3 == 0 ? "Ovis aries" : name)),
                List.of(),
                Optional.of(i % 7 == 0 ? 0.03 : 0.4));
        room.trays().record(call(bone, name, ANN, "beside the drawer"), said);
        i++;
      }
    }
    looks(room);
    return room;
  }

  private static void set(Collection room, RuleName name, String content, String why) {
    room.houseRules().set(new HouseRule(name, content, ANN, DemoCollection.CLOCK.instant(), why));
  }

  /** Ben looked at all but the last four that wait for him; the person without a name at seven. */
  private static void looks(Collection room) {
    LookDesk desk = new LookDesk(room.trays(), room.draws(), new Queue(2, 0.05));
    desk.bringUpToDate();
    List<Waiting> all = desk.waitingFor(BEN);
    for (int i = 0; i < all.size() - 4; i++) {
      TrayBone bone = all.get(i).bone();
      String name = i % 5 == 4 ? "Bovidae" : i % 4 == 2 ? "Capra hircus" : first(room, bone);
      ElementCall element =
          new ElementCall(
              0,
              bone.id(),
              i == 0 ? new ElementKey("tibia") : bone.element(),
              bone.side(),
              bone.portion(),
              BEN,
              DemoCollection.CLOCK.instant(),
              "");
      desk.lookAgain(call(bone, name, BEN, "by the groove"), Optional.of(element));
    }
    for (Waiting third :
        desk.waitingFor(CAT).stream().filter(w -> w.looks() == 1).limit(7).toList()) {
      desk.lookAgain(call(third.bone(), first(room, third.bone()), CAT, ""));
    }
  }

  private static String first(Collection room, TrayBone bone) {
    return room.trays().callsOn(bone.id()).get(0).taxon().value();
  }

  private static Call call(TrayBone bone, String name, PersonId by, String basis) {
    return new Call(
        0,
        bone.id(),
        new TaxonName(name),
        Qualifier.NONE,
        by,
        DemoCollection.CLOCK.instant(),
        basis,
        false);
  }
}
