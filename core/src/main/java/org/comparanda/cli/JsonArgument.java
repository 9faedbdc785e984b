package org.comparanda.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the JSON goes: written beside and renamed, so that no half of it ever stands there. */
final class JsonArgument {
  @Option(
      names = "--json",
      paramLabel = "OUT",
      description = "Write the result as JSON to this file instead of as text.")
  private @Nullable Path out;

  /** Writes a whole JSON text. */
  interface Writing {
    void to(Writer writer) throws IOException;
  }

  Optional<Path> file() {
    return Optional.ofNullable(out);
  }

  static void write(Path file, Writing writing) throws IOException {
    FinishedFile.write(
        file,
        bytes -> {
          Writer writer = new OutputStreamWriter(bytes, StandardCharsets.UTF_8);
          writing.to(writer);
          writer.flush();
        });
  }
}
