package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.KeptAnswer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which kept answers a command is about. */
final class KeptArguments {
  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(
      names = "--bone",
      paramLabel = "BONE",
      description = "Only those of this bone; all of them without it.")
  private @Nullable String bone;

  Collection open(Terminal terminal) {
    return Collection.open(collection, terminal.clock());
  }

  List<KeptAnswer> answers(Collection opened) {
    return Optional.ofNullable(bone)
        .map(id -> opened.keptAnswers().of(new BoneId(id)))
        .orElseGet(() -> opened.keptAnswers().all());
  }

  /** "answer 3 of bone K-1, 2026-05-04T10:00:00Z, beside call 7". */
  static String named(KeptAnswer answer) {
    return "answer "
        + answer.id()
        + " of bone "
        + answer.bone()
        + ", "
        + answer.at()
        + answer.call().map(c -> ", beside call " + c).orElse("");
  }
}
