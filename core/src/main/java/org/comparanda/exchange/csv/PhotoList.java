package org.comparanda.exchange.csv;

import java.util.List;

/** Copies of pictures as a table: what each shows, its file, and the hashes of both. */
public final class PhotoList {
  private PhotoList() {}

  /**
   * One copy.
   *
   * @param of bone or animal
   * @param number number of the bone or animal
   * @param file name of the copy
   * @param original SHA-256 of the stored picture
   * @param copy SHA-256 of the copy
   * @param attached when it was attached
   */
  public record Line(
      String of, String number, String file, String original, String copy, String attached) {}

  /** The table. */
  public static String csv(List<Line> lines) {
    HarmlessCsv csv = new HarmlessCsv();
    csv.row(List.of("of", "number", "file", "sha256_original", "sha256_copy", "attached_at"));
    lines.forEach(
        line ->
            csv.row(
                List.of(
                    line.of(),
                    line.number(),
                    line.file(),
                    line.original(),
                    line.copy(),
                    line.attached())));
    return csv.text();
  }
}
