package org.comparanda.gui.control.falling;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.gui.control.plot.FigureExport.Format;
import org.comparanda.gui.control.plot.Lettering;
import org.comparanda.gui.control.plot.LoweredPen;
import org.comparanda.gui.control.plot.Palette;
import org.comparanda.gui.control.plot.Pen;
import org.comparanda.gui.control.plot.Print;
import org.comparanda.gui.control.plot.TextWidth;
import org.comparanda.gui.control.plot.Tint;
import org.comparanda.gui.control.plot.Xy;

/**
 * The falling line as a picture for print: the sentence that answers over it, what it rests on
 * under it.
 *
 * @param sentence over the picture; the names in it stand in italics
 * @param names of the taxa
 * @param notes lines under the picture
 */
public record FallingPrint(
    FallingPicture picture, String sentence, List<String> names, List<String> notes) {
  private static final double LINE = 1.35 * Print.TEXT;
  private static final int FEW_ROWS = 8;

  public FallingPrint {
    names = List.copyOf(names);
    notes = List.copyOf(notes);
  }

  /**
   * Writes the file, replacing an older one. PNG must be asked for on the JavaFX thread.
   *
   * <p>Errors: {@link java.io.UncheckedIOException} if the file can't be written
   */
  public void write(Format format, Path file) {
    print(format == Format.PNG ? TextWidth.onScreen(Print.FAMILY) : TextWidth.inPrint())
        .write(format, file);
  }

  Print print(TextWidth measure) {
    double row = (picture.rows().size() <= FEW_ROWS ? 5.5 : 2.7) * Print.TEXT;
    Plan some = new Plan(picture, Print.PAGE_WIDTH, 0, Print.TEXT, measure);
    double high = some.top() + some.bottom() + row * Math.max(1, picture.rows().size());
    Plan plan = new Plan(picture, Print.PAGE_WIDTH, high, Print.TEXT, measure);
    List<List<Word>> head = lines(words(sentence), measure);
    List<List<Word>> foot = new ArrayList<>();
    notes.forEach(note -> foot.addAll(lines(words(note), measure)));
    double over = (head.size() + 0.6) * LINE;
    double all = over + high + (foot.size() + 1) * LINE;
    return new Print(
        Print.PAGE_WIDTH,
        all,
        pen -> {
          write(head, LINE, Palette.LIGHT.ink(), measure, pen);
          new FallingDrawing(plan, Palette.LIGHT, InView.all(plan))
              .draw(plan.frame(), new LoweredPen(pen, over));
          write(foot, over + high + LINE, Palette.LIGHT.muted(), measure, pen);
        });
  }

  private void write(List<List<Word>> lines, double from, Tint ink, TextWidth measure, Pen pen) {
    double y = from;
    for (List<Word> line : lines) {
      double x = 0.2 * Print.TEXT;
      for (Word word : line) {
        pen.text(word.text(), new Xy(x, y), word.lettering(), ink);
        x += word.width(measure);
      }
      y += LINE;
    }
  }

  private List<Word> words(String text) {
    List<Word> words = new ArrayList<>();
    String rest = text;
    while (!rest.isBlank()) {
      String left = rest.strip();
      String name = names.stream().filter(left::startsWith).findFirst().orElse("");
      int end = left.indexOf(' ', name.length());
      String word = end < 0 ? left : left.substring(0, end);
      if (name.isEmpty()) {
        words.add(new Word(word, Lettering.Face.PLAIN, Gap.BLANK));
      } else {
        String after = word.substring(name.length());
        words.add(new Word(name, Lettering.Face.ITALIC, after.isEmpty() ? Gap.BLANK : Gap.NONE));
        if (!after.isEmpty()) {
          words.add(new Word(after, Lettering.Face.PLAIN, Gap.BLANK));
        }
      }
      rest = end < 0 ? "" : left.substring(end);
    }
    return words;
  }

  private static List<List<Word>> lines(List<Word> words, TextWidth measure) {
    List<List<Word>> lines = new ArrayList<>();
    List<Word> line = new ArrayList<>();
    double wide = 0;
    for (Word word : words) {
      double next = word.width(measure);
      boolean glued = !line.isEmpty() && line.get(line.size() - 1).gap() == Gap.NONE;
      if (wide + next > Print.PAGE_WIDTH && !line.isEmpty() && !glued) {
        lines.add(List.copyOf(line));
        line.clear();
        wide = 0;
      }
      line.add(word);
      wide += next;
    }
    if (!line.isEmpty()) {
      lines.add(List.copyOf(line));
    }
    return lines;
  }

  private enum Gap {
    BLANK,
    NONE
  }

  private record Word(String text, Lettering.Face face, Gap gap) {
    Lettering lettering() {
      return new Lettering(Print.TEXT, face, Lettering.Anchor.START, Lettering.Turn.LEVEL);
    }

    double width(TextWidth measure) {
      double blank = gap == Gap.BLANK ? 0.28 * Print.TEXT : 0;
      return measure.of(text, lettering()) + blank;
    }
  }
}
