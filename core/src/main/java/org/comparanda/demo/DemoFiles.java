package org.comparanda.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.measurement.Protocol;

/**
 * The files of the Harrowmere demo, made from {@code parameters.csv} and {@code plan.csv}. The same
 * seed gives the same bytes on every Java.
 */
public final class DemoFiles {
  /** The seed of the files that are shipped. */
  public static final long SEED = 20417;

  /** Names of the tables that are shipped: the shelf and the four trays. */
  public static final List<String> TABLES =
      List.of("shelf.csv", "tray-easy.csv", "tray-hard.csv", "tray-messy.csv", "tray-fossil.csv");

  private DemoFiles() {}

  /** File name and text of the shelf and the four trays. */
  public static Map<String, String> made(Protocol protocol, long seed) {
    DemoParameters parameters = DemoParameters.shipped();
    Draws draws = Draws.seeded(seed);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("shelf.csv", DemoShelf.csv(parameters, draws.split()));
    DemoTray trays = new DemoTray(parameters, protocol);
    for (String tray : DemoTray.TRAYS) {
      files.put("tray-" + tray + ".csv", trays.csv(tray, draws.split()));
    }
    return files;
  }

  /** The text of one file as packed with the program. */
  public static String shipped(String file) {
    return DemoTable.text(file);
  }
}
