package org.comparanda.exchange.shelf;

import java.io.IOException;
import java.util.List;

/** Takes the rows of a table one by one, the header first. */
interface TableRows {
  /** One row more. Errors: {@link IOException} if it can't be written. */
  void row(List<String> cells) throws IOException;
}
