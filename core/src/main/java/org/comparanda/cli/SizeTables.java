package org.comparanda.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.exchange.table.BoneTable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.BoneInHand;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.statistics.Outcome;

/**
 * The shelf that a size is asked of, and the bones in hand.
 *
 * @param inHand empty where only the line is asked for
 */
record SizeTables(
    Terminal terminal, ShelfArguments.Opened opened, Optional<TableRead<BoneTable>> inHand) {

  /** Reads both tables; a mapping that neither has is refused. */
  static SizeTables read(
      Terminal terminal,
      ShelfArguments shelf,
      TableArguments tables,
      TableOptions options,
      Optional<Path> bones) {
    ShelfArguments.Opened opened = shelf.open(terminal, options);
    Optional<TableRead<BoneTable>> inHand =
        bones.map(table -> bones(terminal, opened, options, table));
    inHand.ifPresentOrElse(
        read -> tables.everyMappingFound(opened.factsAnd(read.facts())),
        () -> opened.facts().ifPresent(f -> tables.everyMappingFound(List.of(f))));
    return new SizeTables(terminal, opened, inHand);
  }

  private static TableRead<BoneTable> bones(
      Terminal terminal, ShelfArguments.Opened opened, TableOptions options, Path table) {
    return TableReader.of(opened.tables().protocol(), opened.tables().taxa(), options)
        .watchedBy(new ProgressLine(terminal, table))
        .bones(opened.shelf(), table)
        .fold(
            r -> {
              terminal.note(r.facts().sentence());
              return r;
            },
            report -> {
              throw new CannotDo(report.lines());
            });
  }

  SizeDesk desk() {
    return SizeDesk.of(opened.shelf(), opened.protocol());
  }

  /** Estimates what is of one animal, and hands it on. */
  interface Estimating {
    Outcome<?> answer(String id, List<BoneInHand> bones) throws IOException;
  }

  /** Goes through the bones in hand; how many could not be estimated. */
  int each(OneAnimalBones together, Estimating estimating) throws IOException {
    if (inHand.isEmpty()) {
      return 0;
    }
    RowCounter counter = new RowCounter(terminal, inHand.get().facts().rows());
    int[] none = {0};
    try {
      together.forEach(
          inHand.get().content(),
          (id, of) -> {
            try {
              none[0] += estimating.answer(id, of).value().isEmpty() ? 1 : 0;
            } catch (IOException problem) {
              throw new UncheckedIOException(problem);
            }
            counter.oneMore();
          });
    } catch (UncheckedIOException problem) {
      throw problem.getCause();
    }
    return none[0];
  }
}
