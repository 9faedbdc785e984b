package org.comparanda.gui.control.falling;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.comparanda.gui.control.plot.KindLook;

/**
 * What the falling line shows: plain texts and numbers, ready to be drawn.
 *
 * @param columns one per measurement, from the left
 * @param rows one per taxon in play, best fit first
 */
public record FallingPicture(List<Column> columns, List<Row> rows, Captions captions) {
  public FallingPicture {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** Nothing to show. */
  public static FallingPicture empty() {
    return new FallingPicture(List.of(), List.of(), new Captions("", "", "", "", Locale.ROOT));
  }

  /**
   * What is written beside names and numbers.
   *
   * @param share over the bars
   * @param typical over the last numbers
   * @param crowd under the names where a mark stands for several animals; {@code %d} for how many
   * @param others after the tip of a mark that stands for others, too; {@code %d} for how many
   * @param notation how the numbers of the scales are written
   */
  public record Captions(
      String share, String typical, String crowd, String others, Locale notation) {
    String crowd(int most) {
      return crowd.replace("%d", String.valueOf(most));
    }

    String others(int more) {
      return others.replace("%d", String.valueOf(more));
    }
  }

  /**
   * One measurement.
   *
   * @param key code of the measurement
   * @param heading over the column
   * @param under second line of the heading: the reading as written; empty where it is not to be
   *     seen
   * @param reading value of the bone in hand
   */
  public record Column(String key, String heading, String under, Optional<Double> reading) {}

  /**
   * One taxon.
   *
   * @param key the taxon's name
   * @param name as written
   * @param note number of animals
   * @param look colour and shape, the same in every picture
   * @param presence in play, or shown greyed from the drawer
   * @param fit share and typicality; both or none
   * @param strips its animals by the key of the column
   */
  public record Row(
      String key,
      String name,
      String note,
      KindLook look,
      Presence presence,
      Optional<Fit> fit,
      Map<String, List<Dot>> strips) {
    public Row {
      strips = Map.copyOf(strips);
    }

    /** Its dots in a column. */
    List<Dot> dots(String column) {
      return strips.getOrDefault(column, List.of());
    }
  }

  /** Whether a taxon is still in play. */
  public enum Presence {
    IN_PLAY,
    IN_DRAWER
  }

  /**
   * Share and typicality, never one without the other.
   *
   * @param share 0 to 1, the length of the bar
   */
  public record Fit(double share, String shareText, String typicalText) {}

  /**
   * One animal.
   *
   * @param id what a click on it gives
   * @param tip what is said when the pointer is over it
   */
  public record Dot(double value, String id, String tip) {}
}
