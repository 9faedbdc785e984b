package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.json.TrialJson;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Counting;
import org.comparanda.suggestion.SecondOpinions;
import org.comparanda.suggestion.StrangerTrial;
import org.comparanda.suggestion.Trial;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the shelf says of its own animals, each left out in turn. */
@Command(
    name = "trial",
    description =
        "Leave each animal of the shelf out in turn and see what the others say of it: the table of"
            + " hits.",
    mixinStandardHelpOptions = true)
final class TrialCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private ComparisonArguments comparing = new ComparisonArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  @Option(
      names = "--rows",
      defaultValue = "animals",
      paramLabel = "ROWS",
      description =
          "animals (default: one row each, the mean of its sides) or bones (each bone a row, its"
              + " whole animal still left out).")
  private Counting rows = Counting.ANIMALS;

  @Option(
      names = "--stranger",
      description = "Take each taxon off the shelf in turn, too: what is said of strangers?")
  private boolean stranger;

  @Option(
      names = "--second-opinions",
      description =
          "Compare all methods by ten outer folds of animals instead; may take minutes on a large"
              + " shelf.")
  private boolean secondOpinions;

  TrialCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    UnaryOperator<ComparisonRules> asked = comparing.asked();
    TableOptions options = tables.options().withNumbers(comparing.numbers());
    ShelfArguments.Opened opened = shelf.open(terminal, options);
    opened.facts().ifPresent(f -> tables.everyMappingFound(List.of(f)));
    ElementKey element = tables.element().orElseGet(() -> onlyElement(opened.shelf()));
    List<MeasurementCode> set = set(opened, element);
    Comparison comparison =
        Comparison.of(
            opened.shelf(),
            opened.protocol(),
            opened.tables().taxa(),
            asked.apply(opened.rules().comparison()).withCounting(rows));
    Optional<Path> out = json.file();
    TrialText text = new TrialText(terminal);
    TrialJson writer = new TrialJson(ProgramName.current());
    if (secondOpinions) {
      SecondOpinions opinions =
          comparison
              .secondOpinions(element, set, () -> false)
              .fold(
                  found -> found,
                  none -> {
                    throw new CannotDo(none.reason() + " " + none.remedy());
                  });
      if (out.isPresent()) {
        JsonArgument.write(out.get(), w -> writer.write(w, opinions));
      } else {
        new SecondOpinionsText(terminal).write(opinions);
      }
    } else if (stranger) {
      StrangerTrial strangers = comparison.strangers(element, set);
      if (out.isPresent()) {
        JsonArgument.write(out.get(), w -> writer.write(w, strangers));
      } else {
        text.write(strangers);
      }
    } else {
      Trial trial = comparison.trial(element, set);
      if (out.isPresent()) {
        JsonArgument.write(out.get(), w -> writer.write(w, trial));
      } else {
        text.write(trial);
      }
    }
    out.ifPresent(file -> terminal.say("Trial of " + element + ": " + file));
    return Terminal.FINE;
  }

  private static ElementKey onlyElement(Shelf shelf) {
    Set<ElementKey> elements = new TreeSet<>();
    shelf.animals().forEach(a -> a.bones().forEach(b -> elements.add(b.element())));
    if (elements.size() != 1) {
      throw new CannotDo(
          elements.isEmpty()
              ? "The shelf holds no bones. Nothing was tried. Add animals first."
              : "The shelf holds several elements. Nothing was tried. Pick one by --element: "
                  + String.join(", ", elements.stream().map(ElementKey::value).toList())
                  + ".");
    }
    return elements.iterator().next();
  }

  /** The measurements that the shelf has of the element, in the order of the protocol. */
  private List<MeasurementCode> set(ShelfArguments.Opened opened, ElementKey element) {
    Set<MeasurementCode> there = new TreeSet<>();
    for (var animal : opened.shelf().animals()) {
      for (ShelfBone bone : animal.bones()) {
        if (bone.element().equals(element)) {
          there.addAll(bone.values().keySet());
        }
      }
    }
    if (there.isEmpty()) {
      throw new CannotDo(
          "The shelf holds no measured "
              + element
              + ". Nothing was tried. Pick another --element.");
    }
    if (!tables.only().isEmpty()) {
      return tables.only().stream().map(MeasurementCode::new).filter(there::contains).toList();
    }
    Set<MeasurementCode> ordered = new LinkedHashSet<>();
    opened.protocol().of(element).stream()
        .map(Measurement::code)
        .filter(there::contains)
        .forEach(ordered::add);
    ordered.addAll(there);
    return List.copyOf(ordered);
  }
}
