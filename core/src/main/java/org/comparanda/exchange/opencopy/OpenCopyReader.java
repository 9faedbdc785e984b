package org.comparanda.exchange.opencopy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;

/** Reads an open copy row by row, so that any size fits. */
public final class OpenCopyReader {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final BufferedReader lines;
  private final OpenCopyHead head;
  private long line;
  private long counted;

  /**
   * Reads the first line.
   *
   * <p>Errors: {@link OpenCopyProblem} if it is no open copy or one of a newer form; {@link
   * IOException} if the file can't be read.
   */
  public OpenCopyReader(BufferedReader lines) throws IOException {
    this.lines = lines;
    JsonNode first = next();
    if (first.path("openCopy").asInt() != OpenCopyWriter.FORM) {
      throw new OpenCopyProblem(line, "is not the head of an open copy of this form");
    }
    head =
        new OpenCopyHead(
            first.path("program").asText(),
            first.path("contentHash").asText(),
            first.path("dayBookHead").asText());
  }

  public OpenCopyHead head() {
    return head;
  }

  /** Gives every row, then checks that none is missing. Errors as above. Returns their number. */
  public long rows(BiConsumer<String, Map<String, Object>> taker) throws IOException {
    long rows = 0;
    for (JsonNode node = next(); !node.has("end"); node = next()) {
      if (!node.path("table").isTextual() || !node.path("row").isObject()) {
        throw new OpenCopyProblem(line, "is no row of a table");
      }
      taker.accept(node.get("table").textValue(), columns(node.get("row")));
      rows++;
    }
    if (rows != counted) {
      throw new OpenCopyProblem(line, "counts " + counted + " rows, but there are " + rows);
    }
    return rows;
  }

  private Map<String, Object> columns(JsonNode row) {
    Map<String, Object> columns = new LinkedHashMap<>();
    row.properties()
        .forEach(
            field -> {
              JsonNode value = field.getValue();
              if (value.isIntegralNumber()) {
                columns.put(field.getKey(), value.longValue());
              } else if (value.isNumber()) {
                columns.put(field.getKey(), value.doubleValue());
              } else if (value.isTextual()) {
                columns.put(field.getKey(), value.textValue());
              } else {
                throw new OpenCopyProblem(
                    line, "holds neither number nor text in " + field.getKey());
              }
            });
    return columns;
  }

  private JsonNode next() throws IOException {
    String text = lines.readLine();
    line++;
    if (text == null) {
      throw new OpenCopyProblem(line, "is missing: the file was cut off");
    }
    try {
      JsonNode node = JSON.readTree(text);
      if (!node.isObject()) {
        throw new OpenCopyProblem(line, "is no JSON object");
      }
      counted = node.path("end").asLong(-1);
      return node;
    } catch (JsonProcessingException broken) {
      throw new OpenCopyProblem(line, "is no JSON");
    }
  }
}
