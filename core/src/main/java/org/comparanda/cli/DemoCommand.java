package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.demo.DemoFiles;
import org.comparanda.demo.Harrowmere;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.storage.Collection;
import org.comparanda.storage.DataFolder;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.tables.ReferenceTables;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes the demo collection and does the main job on a demo tray. */
@Command(
    name = "demo",
    description = {
      "Make the demo collection (invented, all values simulated) and suggest taxa for one of its"
          + " trays.",
      "A demo collection that is there already is used as it is."
    },
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = "--at",
      paramLabel = "FOLDER",
      description =
          "Folder for harrowmere.comparanda and the trays as tables; the data folder of this"
              + " program when not given.")
  private @Nullable Path folder;

  DemoCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Path place = folder == null ? dataFolder() : folder;
    Path file = place.resolve(Harrowmere.FILE);
    ReferenceTables tables = ReferenceTables.shipped();
    Harrowmere demo = Harrowmere.read(tables);
    Shelf shelf;
    try (Collection collection = Collection.openOrCreate(file, terminal.clock())) {
      collection.caution().ifPresent(terminal::note);
      if (collection.animals().shelf().animals().isEmpty()) {
        demo.fill(
            collection.tableIntake(),
            collection.trays(),
            collection.lots(),
            collection.readings(),
            collection.people(),
            terminal.clock().instant());
      }
      shelf = collection.animals().shelf();
    }
    for (String table : DemoFiles.TABLES) {
      Files.writeString(place.resolve(table), DemoFiles.shipped(table));
    }
    introduce(file, shelf);
    Harrowmere.DemoBones tray = demo.trays().get(0);
    terminal.say(tray.tray().name() + ", " + Count.of(tray.bones().size(), "bone") + ":");
    terminal.say("");
    Comparison comparison =
        Comparison.of(
            shelf,
            tables.protocol(),
            tables.taxa(),
            ComparisonRules.withDefaults().withAge(tray.tray().age()));
    SuggestionText text = new SuggestionText(terminal);
    for (BoneInHand bone : tray.bones()) {
      text.write(comparison.suggest(bone));
    }
    new SnoutLesson(terminal, shelf, tables.protocol(), tables.taxa()).tell();
    terminal.say("");
    terminal.say("All data above are simulated. A suggestion is not an identification.");
    terminal.say(
        "Next: java -jar core/target/comparanda.jar suggest "
            + quoted(place.resolve("tray-hard.csv"))
            + " --collection "
            + quoted(file));
    return Terminal.FINE;
  }

  private void introduce(Path file, Shelf shelf) {
    terminal.say("The Harrowmere Bone Room: an invented collection, every value simulated.");
    terminal.say(
        "Its shelf ("
            + Count.of(shelf.animals().size(), "animal")
            + ", "
            + Count.of(shelf.taxa().size(), "taxon", "taxa")
            + ") is in "
            + file
            + ".");
    terminal.say("");
  }

  /** A name with a blank needs quotation marks on any command line. */
  private static String quoted(Path path) {
    String name = path.toString();
    return name.contains(" ") ? '"' + name + '"' : name;
  }

  private static Path dataFolder() {
    Map<String, String> properties =
        System.getProperties().stringPropertyNames().stream()
            .collect(Collectors.toMap(name -> name, name -> System.getProperty(name, "")));
    return DataFolder.of(properties, System.getenv());
  }
}
