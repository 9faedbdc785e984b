package org.comparanda.gui.app;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.Executor;
import org.comparanda.gui.text.Words;

/**
 * The one handler of what nobody foresaw: says what happened, what became of the data and what to
 * do, in the window; the full account goes to the log.
 */
final class Mishaps implements Thread.UncaughtExceptionHandler {
  /** Shows a message to the person. */
  interface Board {
    void show(String message, String account);
  }

  private final Words words;
  private final Executor ui;
  private final Board board;

  Mishaps(Words words, Executor ui, Board board) {
    this.words = words;
    this.ui = ui;
    this.board = board;
  }

  @Override
  public void uncaughtException(Thread thread, Throwable mishap) {
    StringWriter account = new StringWriter();
    mishap.printStackTrace(new PrintWriter(account, true));
    String message = words.get("mishap", sentence(mishap));
    ui.execute(() -> board.show(message, account.toString()));
  }

  private String sentence(Throwable mishap) {
    String said = mishap.getMessage();
    return said == null || said.isBlank() ? words.get("mishap.unnamed") : words.said(said);
  }
}
