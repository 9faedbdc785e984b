package org.comparanda.exchange.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;

/** One JSON text being written, with our forms of a number, a limit pair and a "could not". */
final class JsonText implements AutoCloseable {
  private final JsonGenerator out;

  JsonText(Writer writer) throws IOException {
    out = new JsonFactory().createGenerator(writer);
    DefaultPrettyPrinter pretty = new DefaultPrettyPrinter();
    pretty.indentObjectsWith(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed("\n"));
    out.setPrettyPrinter(pretty);
    out.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
  }

  JsonText object() throws IOException {
    out.writeStartObject();
    return this;
  }

  JsonText object(String name) throws IOException {
    out.writeObjectFieldStart(name);
    return this;
  }

  JsonText endObject() throws IOException {
    out.writeEndObject();
    return this;
  }

  JsonText array(String name) throws IOException {
    out.writeArrayFieldStart(name);
    return this;
  }

  JsonText endArray() throws IOException {
    out.writeEndArray();
    return this;
  }

  JsonText text(String name, Object value) throws IOException {
    out.writeStringField(name, value.toString());
    return this;
  }

  JsonText optionalText(String name, Optional<?> value) throws IOException {
    if (value.isEmpty()) {
      out.writeNullField(name);
      return this;
    }
    return text(name, value.get());
  }

  /** The number, or null where there is none. */
  JsonText optionalNumber(String name, Optional<Double> value) throws IOException {
    return value.isPresent() ? number(name, value.get()) : nothing(name);
  }

  JsonText yesOrNo(String name, boolean value) throws IOException {
    out.writeBooleanField(name, value);
    return this;
  }

  JsonText nothing(String name) throws IOException {
    out.writeNullField(name);
    return this;
  }

  JsonText array() throws IOException {
    out.writeStartArray();
    return this;
  }

  JsonText count(String name, long value) throws IOException {
    out.writeNumberField(name, value);
    return this;
  }

  JsonText number(String name, double value) throws IOException {
    out.writeFieldName(name);
    return number(value);
  }

  JsonText number(double value) throws IOException {
    if (Double.isFinite(value)) {
      out.writeNumber(value);
      return this;
    }
    return couldNot("The number is beyond what can be computed.", "Look at the values behind it.");
  }

  JsonText number(String name, Outcome<Double> value) throws IOException {
    out.writeFieldName(name);
    return number(value);
  }

  JsonText number(Outcome<Double> value) throws IOException {
    Optional<Double> there = value.value();
    return there.isPresent() ? number(there.get()) : couldNot(value);
  }

  JsonText limits(double low, double high) throws IOException {
    out.writeStartArray();
    number(low);
    number(high);
    out.writeEndArray();
    return this;
  }

  JsonText limits(String name, double low, double high) throws IOException {
    out.writeFieldName(name);
    return limits(low, high);
  }

  /** The two-sided 95 % limits of a rate by Wilson's score. */
  JsonText wilson95(Proportion rate) throws IOException {
    Interval limits = rate.wilson(0.95);
    return limits("wilson95", limits.lower(), limits.upper());
  }

  JsonText name(String name) throws IOException {
    out.writeFieldName(name);
    return this;
  }

  JsonText names(String name, List<?> values) throws IOException {
    array(name);
    for (Object value : values) {
      out.writeString(value.toString());
    }
    return endArray();
  }

  JsonText couldNot(Outcome<?> outcome) throws IOException {
    String[] why =
        outcome.fold(v -> new String[] {"", ""}, n -> new String[] {n.reason(), n.remedy()});
    return couldNot(why[0], why[1]);
  }

  JsonText couldNot(String reason, String remedy) throws IOException {
    object();
    object("notEstimable").text("reason", reason).text("remedy", remedy).endObject();
    return endObject();
  }

  @Override
  public void close() throws IOException {
    out.writeRaw('\n');
    out.close();
  }
}
