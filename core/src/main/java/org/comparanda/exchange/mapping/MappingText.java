package org.comparanda.exchange.mapping;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.DecimalMark;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.statistics.Outcome;

/**
 * A saved mapping as JSON text: {@code {"mapping":1,"columns":{"taxon":"species"},"leave":[…],
 * "only":[…],"element","shape","unit","units":{"GL":"in"},"decimal","sheet","headerRow","register","asIs"}}.
 * What is not said is as if nothing were said on the command line.
 */
public final class MappingText {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Set<String> FIELDS =
      Set.of(
          "mapping",
          "columns",
          "leave",
          "only",
          "element",
          "shape",
          "unit",
          "units",
          "decimal",
          "sheet",
          "headerRow",
          "register",
          "asIs");

  private MappingText() {}

  /** The text of a mapping. */
  public static String write(TableOptions options) {
    ObjectNode root = JSON.createObjectNode();
    root.put("mapping", 1);
    ObjectNode columns = root.putObject("columns");
    options.as().forEach(columns::put);
    texts(root.putArray("leave"), options.aside().stream().sorted().toList());
    texts(root.putArray("only"), options.only());
    options.element().ifPresent(e -> root.put("element", e.value()));
    if (options.shape() != TableOptions.Shape.BY_HEADER) {
      root.put("shape", options.shape().name().toLowerCase(Locale.ROOT));
    }
    options.unit().ifPresent(u -> root.put("unit", u.symbol()));
    ObjectNode units = root.putObject("units");
    options.units().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(e -> units.put(e.getKey(), e.getValue().symbol()));
    options.decimal().ifPresent(d -> root.put("decimal", d.word()));
    options.sheet().ifPresent(s -> root.put("sheet", s));
    options.headerRow().ifPresent(row -> root.put("headerRow", row));
    root.put("register", options.unknown() == TableOptions.Unknown.REGISTER);
    root.put("asIs", options.unitDoubt() == TableOptions.UnitDoubt.TAKE_AS_IS);
    return root.toPrettyString() + "\n";
  }

  private static void texts(ArrayNode array, List<String> texts) {
    texts.forEach(array::add);
  }

  /** The mapping of a text, or what is wrong with it; {@code name} says which mapping it is. */
  public static Outcome<TableOptions> read(String name, String text) {
    try {
      JsonNode root = JSON.readTree(text);
      if (root == null || root.path("mapping").asInt() != 1) {
        return broken(name, "it is no mapping (\"mapping\" : 1 is missing)");
      }
      for (Map.Entry<String, JsonNode> field : root.properties()) {
        if (!FIELDS.contains(field.getKey())) {
          return broken(name, "it has the field \"" + field.getKey() + "\", which nobody knows");
        }
      }
      return Outcome.of(options(root));
    } catch (JsonProcessingException unreadable) {
      return broken(name, "it is no JSON: " + unreadable.getOriginalMessage());
    } catch (IllegalArgumentException wrong) {
      return broken(name, wrong.getMessage() == null ? "a field is wrong" : wrong.getMessage());
    }
  }

  private static TableOptions options(JsonNode root) {
    Map<String, String> columns = new LinkedHashMap<>();
    root.path("columns").properties().forEach(e -> columns.put(e.getKey(), text(e.getValue())));
    TableOptions options =
        TableOptions.withDefaults()
            .withAs(columns)
            .withAside(new LinkedHashSet<>(texts(root.path("leave"))))
            .withOnly(texts(root.path("only")));
    for (Map.Entry<String, JsonNode> unit : root.path("units").properties()) {
      options = options.withUnit(unit.getKey(), unit(text(unit.getValue())));
    }
    if (root.has("element")) {
      options = options.withElement(new ElementKey(text(root.get("element"))));
    }
    if (root.has("unit")) {
      options = options.withUnit(unit(text(root.get("unit"))));
    }
    if (root.has("shape")) {
      options = options.withShape(word(TableOptions.Shape.values(), text(root.get("shape"))));
    }
    if (root.has("decimal")) {
      options = options.withDecimal(word(DecimalMark.values(), text(root.get("decimal"))));
    }
    if (root.has("sheet")) {
      options = options.withSheet(text(root.get("sheet")));
    }
    if (root.has("headerRow")) {
      options = options.withHeaderRow(row(root.get("headerRow")));
    }
    return options
        .withUnknown(
            root.path("register").asBoolean()
                ? TableOptions.Unknown.REGISTER
                : TableOptions.Unknown.REFUSE)
        .withUnitDoubt(
            root.path("asIs").asBoolean()
                ? TableOptions.UnitDoubt.TAKE_AS_IS
                : TableOptions.UnitDoubt.REFUSE);
  }

  private static <T> Outcome<T> broken(String name, String what) {
    return Outcome.none(
        "The mapping \"" + name + "\" can't be used: " + what + ".",
        "Correct it, or make it anew from a table.");
  }

  private static String text(JsonNode node) {
    if (!node.isTextual()) {
      throw new IllegalArgumentException("not a text: " + node);
    }
    return node.textValue();
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(each -> texts.add(text(each)));
    return texts;
  }

  private static long row(JsonNode node) {
    if (!node.isIntegralNumber() || node.longValue() < 1) {
      throw new IllegalArgumentException("not the number of a row: " + node);
    }
    return node.longValue();
  }

  private static LengthUnit unit(String symbol) {
    return LengthUnit.ofSymbol(symbol)
        .orElseThrow(() -> new IllegalArgumentException("\"" + symbol + "\" is no unit"));
  }

  private static <E extends Enum<E>> E word(E[] words, String text) {
    Optional<E> found =
        Arrays.stream(words).filter(w -> w.name().equalsIgnoreCase(text)).findFirst();
    return found.orElseThrow(
        () -> new IllegalArgumentException("\"" + text + "\" is not one of its words"));
  }
}
