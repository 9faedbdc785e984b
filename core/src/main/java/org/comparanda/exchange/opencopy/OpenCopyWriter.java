package org.comparanda.exchange.opencopy;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;

/** Writes an open copy, a line a row; the last line counts them, so that a cut one is found. */
public final class OpenCopyWriter implements AutoCloseable {
  /** Number of this form. */
  static final int FORM = 1;

  private final JsonGenerator json;
  private long rows;

  /** Begins the copy. Errors: {@link IOException} if it can't be written. */
  public OpenCopyWriter(Writer out, OpenCopyHead head) throws IOException {
    json = new JsonFactory().createGenerator(out);
    json.setPrettyPrinter(new MinimalPrettyPrinter("\n"));
    json.writeStartObject();
    json.writeNumberField("openCopy", FORM);
    json.writeStringField("program", head.program());
    json.writeStringField("contentHash", head.contentHash());
    json.writeStringField("dayBookHead", head.dayBookHead());
    json.writeEndObject();
  }

  /** One row of a table: whole numbers, numbers and texts; what is absent is left out. */
  public void row(String table, Map<String, Object> columns) {
    try {
      json.writeStartObject();
      json.writeStringField("table", table);
      json.writeObjectFieldStart("row");
      for (Map.Entry<String, Object> column : columns.entrySet()) {
        json.writeFieldName(column.getKey());
        if (column.getValue() instanceof Long || column.getValue() instanceof Integer) {
          json.writeNumber(((Number) column.getValue()).longValue());
        } else if (column.getValue() instanceof Number number) {
          json.writeNumber(number.doubleValue());
        } else {
          json.writeString(column.getValue().toString());
        }
      }
      json.writeEndObject();
      json.writeEndObject();
      rows++;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Rows so far. */
  public long rows() {
    return rows;
  }

  @Override
  public void close() throws IOException {
    json.writeStartObject();
    json.writeNumberField("end", rows);
    json.writeEndObject();
    json.writeRaw('\n');
    json.close();
  }
}
