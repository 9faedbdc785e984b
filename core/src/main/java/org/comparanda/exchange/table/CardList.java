package org.comparanda.exchange.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.oldcards.OldCard;
import org.comparanda.statistics.Outcome;

/**
 * Reads a legacy list: one card a line, or the cells of one column of a table (CSV, .xlsx). Texts
 * are kept as found; blank ones are no cards.
 *
 * @param encoding in which the list was saved; never guessed
 */
public record CardList(Charset encoding) {
  /** Lists in UTF-8. */
  public static CardList withDefaults() {
    return new CardList(StandardCharsets.UTF_8);
  }

  public CardList withEncoding(Charset other) {
    return new CardList(other);
  }

  /** Every line of a text file. */
  public Outcome<List<OldCard>> lines(Path list) {
    return read(
        list,
        (problems, text, cards) -> {
          if (SpreadsheetFile.is(list)) {
            problems.file(
                "the list is a spreadsheet", "Say by --text HEADER in which column the cards are.");
            return;
          }
          new TextCheck(text).plain(problems);
          if (problems.isEmpty()) {
            lines(text, cards);
          }
        });
  }

  private static void lines(Path list, List<OldCard> cards) throws IOException {
    try (BufferedReader text = new BufferedReader(TextCheck.text(list))) {
      long row = 0;
      for (String line = text.readLine(); line != null; line = text.readLine()) {
        row++;
        add(cards, list, row, line);
      }
    }
  }

  /** The cells of one column of a table. */
  public Outcome<List<OldCard>> column(Path list, String header, Optional<String> sheet) {
    return read(
        list,
        (problems, text, cards) -> {
          Optional<RowSource> rows =
              TableOpening.rows(text, sheet, ReadingProgress.unwatched(), problems);
          if (rows.isEmpty()) {
            return;
          }
          int column = rows.get().header().indexOf(header);
          if (column < 0) {
            problems.column(
                1,
                header,
                "the table has no such column",
                NearestName.to(header, rows.get().header())
                        .map(n -> "The nearest is " + n + ". ")
                        .orElse("")
                    + "Correct --text.");
          } else {
            rows.get()
                .eachRow(problems, (row, cells) -> add(cards, text, row, cells.get(column).text()));
          }
        });
  }

  private static void add(List<OldCard> cards, Path list, long row, String text) {
    if (!text.isBlank()) {
      cards.add(new OldCard(0, String.valueOf(list.getFileName()), row, text));
    }
  }

  /** Fills cards from the list in UTF-8, or problems. */
  private interface Reading {
    void into(ProblemList problems, Path text, List<OldCard> cards) throws IOException;
  }

  private Outcome<List<OldCard>> read(Path list, Reading reading) {
    ProblemList problems = new ProblemList(String.valueOf(list.getFileName()));
    List<OldCard> cards = new ArrayList<>();
    try {
      if (encoding.equals(StandardCharsets.UTF_8) || SpreadsheetFile.is(list)) {
        if (!SpreadsheetFile.is(list)) {
          Encodings.doubts(list, problems);
        }
        if (problems.isEmpty()) {
          reading.into(problems, list, cards);
        }
      } else {
        Encodings.inUtf8(list, encoding, problems, text -> reading.into(problems, text, cards));
      }
    } catch (NoSuchFileException missing) {
      problems.file("there is no such file", "Check the name and the folder.");
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check that you may read it.");
    }
    if (problems.isEmpty() && cards.isEmpty()) {
      problems.file("there is no card in it", "Check that this is the right list.");
    }
    return problems.isEmpty()
        ? Outcome.of(List.copyOf(cards))
        : Outcome.none(
            String.join("\n", problems.report().lines()), "Correct the list and start again.");
  }
}
