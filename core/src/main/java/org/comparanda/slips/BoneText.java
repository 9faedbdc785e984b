package org.comparanda.slips;

import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.ElementNames;
import org.comparanda.bone.Side;
import org.comparanda.dossier.Dossier;
import org.comparanda.suggestion.Phrases;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallWords;

/** What stands on pages, in the words of their language. */
final class BoneText {
  private final SlipFacts facts;
  private final Phrases phrases;
  private final ElementNames elements;
  private final CallWords calls;

  BoneText(SlipFacts facts) {
    this.facts = facts;
    phrases = Phrases.beside(BoneText.class, facts.language());
    elements = ElementNames.in(facts.language());
    calls = CallWords.in(facts.language());
  }

  /** The text of a key, its places filled. */
  String say(String key, Object... places) {
    return phrases.say(key, places);
  }

  /** The heads of the columns of a table; one without a name has none. */
  List<String> heads(String... columns) {
    return Stream.of(columns)
        .map(column -> column.isEmpty() ? "" : say("column." + column))
        .toList();
  }

  /** For example: left humerus, lower part. */
  String bone(Dossier d) {
    String element = element(d.bone().element());
    String part = word("portion", d.bone().portion());
    return d.bone().side() == Side.LEFT || d.bone().side() == Side.RIGHT
        ? say("bone.sided", word("side", d.bone().side()), element, part)
        : say("bone", element, part);
  }

  String element(ElementKey key) {
    return facts
        .protocol()
        .element(key)
        .map(Element::name)
        .map(name -> elements.of(key, name))
        .orElse(key.value());
  }

  /** The name with its qualifier where open nomenclature puts it; "not called yet" without one. */
  String name(Optional<Call> call) {
    return call.map(Call::written).orElse(say("call.none"));
  }

  /** The name, with what the row is where it is no ordinary call. */
  String nameAndKind(Call call) {
    return call.kind() == Call.Kind.CALL
        ? call.written()
        : say("call.kind", call.written(), word("kind", call.kind()));
  }

  /** What a call rests on. */
  String basis(Call call) {
    return calls.basis(call);
  }

  /** Who made the call and on which day. */
  String by(Call call) {
    return facts.name().apply(call.person()) + ", " + call.at().toString().substring(0, 10);
  }

  String yesOrNo(boolean yes) {
    return say(yes ? "yes" : "no");
  }

  /** A share or typicality: four decimals, in powers of ten where that would be nothing. */
  String chance(double value) {
    return number(value != 0 && value < 0.00005 ? "%.0e" : "%.4f", value);
  }

  /** A number in the notation of the words. */
  String number(String format, double value) {
    return String.format(phrases.locale(), format, value);
  }

  /** A number written with a point, in the notation of the words. */
  String written(String plain) {
    char mark = DecimalFormatSymbols.getInstance(phrases.locale()).getDecimalSeparator();
    return plain.replace('.', mark);
  }

  String word(String kind, Enum<?> word) {
    return say(kind + "." + word.name().toLowerCase(Locale.ROOT));
  }
}
