package org.comparanda.exchange.opencopy;

/** An open copy that can't be read whole; the message says where and what to do. */
public final class OpenCopyProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  OpenCopyProblem(long line, String what) {
    super(
        "The open copy can't be read: line "
            + line
            + " "
            + what
            + ". Nothing was restored. Fetch the file again, or an older copy.");
  }
}
