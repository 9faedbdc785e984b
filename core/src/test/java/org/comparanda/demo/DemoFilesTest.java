package org.comparanda.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.comparanda.measurement.Protocol;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Test;

/**
 * Made anew, after a change of parameters.csv or plan.csv, by {@code mvn -q -pl core test
 * -Dtest=DemoFilesTest -Dgolden.write=true}.
 */
class DemoFilesTest {
  private static final Path FOLDER = Path.of("../demo-data");
  private static final Protocol PROTOCOL = ReferenceTables.shipped().protocol();

  @Test
  void filesOnDiskAreWhatTheGeneratorMakes() throws IOException {
    for (Map.Entry<String, String> file : DemoFiles.made(PROTOCOL, DemoFiles.SEED).entrySet()) {
      Path onDisk = FOLDER.resolve(file.getKey());
      if (Boolean.getBoolean("golden.write")) {
        Files.writeString(onDisk, file.getValue());
      }
      assertEquals(Files.readString(onDisk), file.getValue(), file.getKey());
    }
  }

  @Test
  void anotherSeedMakesAnotherShelf() {
    assertNotEquals(
        DemoFiles.made(PROTOCOL, 1).get("shelf.csv"), DemoFiles.made(PROTOCOL, 2).get("shelf.csv"));
  }
}
