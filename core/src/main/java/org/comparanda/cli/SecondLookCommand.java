package org.comparanda.cli;

import java.util.Optional;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.Queue;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.WrittenName;
import picocli.CommandLine.Command;

/** Groups what is done in the Second Look. */
@Command(
    name = "second-look",
    description = {
      "Bones that another person looks at again: every nth first call (House Rules), and apart from",
      "it those called against the suggestion, the first of their kind and those of low typicality."
    },
    synopsisSubcommandLabel = "COMMAND",
    mixinStandardHelpOptions = true)
final class SecondLookCommand {
  /** The desk by the rules of the house, brought up to date. */
  static LookDesk desk(Collection opened) {
    Queue rule =
        new Queue(
            Integer.parseInt(opened.houseRules().now(RuleName.SECOND_LOOK_EVERY)),
            Double.parseDouble(opened.houseRules().now(RuleName.SECOND_LOOK_TYPICALITY)));
    LookDesk desk = new LookDesk(opened.trays(), opened.draws(), rule);
    desk.bringUpToDate();
    return desk;
  }

  /** A call as it is typed here: the suggestion was not seen. */
  static Call call(
      Collection opened, Terminal terminal, PersonId by, String bone, String name, String basis) {
    WrittenName written = CannotDo.orElse(WrittenName.read(name));
    return new Call(
        0,
        TrayNamed.bone(opened, bone).id(),
        written.taxon(),
        written.qualifier(),
        by,
        terminal.clock().instant(),
        basis,
        false,
        Grounds.notSaid().withAsWritten(name.strip()),
        Call.Kind.CALL,
        Optional.empty());
  }
}
