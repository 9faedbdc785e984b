package org.comparanda.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Leaves one line about a long proof (kills, soaks, simulations) for docs/validation.md. The test
 * itself asserts; this only records what was run.
 */
public final class ProofRecord {
  private ProofRecord() {}

  /** Whether the proofs run in full size ({@code -Pproof}) or small, as in the ordinary tests. */
  public static boolean full() {
    return "full".equals(System.getProperty("proof.size"));
  }

  /**
   * Records a proof that held.
   *
   * @param name file name, small letters and hyphens
   * @param proof what was proved, a sentence
   * @param size how much was run
   * @param seed the seed
   * @param result the figures
   */
  public static void held(String name, String proof, String size, long seed, String result)
      throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "proofs"));
    Files.write(
        folder.resolve(name + ".csv"),
        List.of(
            "proof,size,seed,result",
            quoted(proof) + "," + quoted(size) + "," + seed + "," + quoted(result)));
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }
}
