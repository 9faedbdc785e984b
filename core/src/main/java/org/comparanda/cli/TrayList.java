package org.comparanda.cli;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.Priority;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists the trays with what lies in them. */
@Command(
    name = "list",
    description =
        "List the trays, those wanted first on top: lot, state, bones, how many are called.",
    mixinStandardHelpOptions = true)
final class TrayList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  TrayList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      opened.trays().all().stream()
          .sorted(Comparator.comparingInt(tray -> tray.priority().rank()))
          .forEach(tray -> say(opened, tray));
    }
    return Terminal.FINE;
  }

  private void say(Collection opened, Tray tray) {
    List<TrayBone> bones = opened.trays().bonesOf(tray.id());
    long called =
        bones.stream()
            .filter(b -> new CallHistory(opened.trays().callsOn(b.id())).holding().isPresent())
            .count();
    long stopped = bones.stream().filter(b -> b.standing() == TrayBone.Standing.STOPPED).count();
    long scrap = opened.scraps().of(tray.id()).stream().mapToLong(Scrap::pieces).sum();
    Priority priority = tray.priority();
    terminal.say(
        tray.id().value()
            + ": "
            + tray.name()
            + "; lot "
            + tray.lot()
            + "; "
            + Words.of(tray.state())
            + tray.assignedTo().map(p -> " with " + p.value()).orElse("")
            + (priority.equals(Priority.ordinary())
                ? ""
                : "; priority "
                    + priority.rank()
                    + " ("
                    + priority.reason()
                    + (priority.requestedBy().isBlank() ? "" : ", for " + priority.requestedBy())
                    + ")")
            + "; "
            + Count.of(bones.size(), "bone")
            + ", "
            + called
            + " called"
            + (stopped > 0 ? ", " + stopped + " set aside as possibly human" : "")
            + (scrap > 0 ? "; " + Count.of(scrap, "piece") + " of scrap" : "")
            + (tray.hazards().isBlank() ? "" : "; hazards: " + tray.hazards()));
  }
}
