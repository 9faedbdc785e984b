package org.comparanda.tray;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementNames;
import org.comparanda.reference.AnimalId;

/**
 * What was said of a bone, in the words of one language: {@code phrases.properties} beside this
 * class is English, with a suffix other languages; a language without a file speaks English.
 *
 * <p>Errors: {@link java.util.MissingResourceException} if a key is missing; a test compares the
 * files.
 */
public final class CallWords {
  private static final ResourceBundle.Control NO_DETOUR =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final ResourceBundle bundle;
  private final ElementNames elements;

  private CallWords(ResourceBundle bundle, ElementNames elements) {
    this.bundle = bundle;
    this.elements = elements;
  }

  /** The words of a language. */
  public static CallWords in(Locale language) {
    String file = CallWords.class.getPackageName() + ".phrases";
    return new CallWords(
        ResourceBundle.getBundle(file, language, NO_DETOUR), ElementNames.in(language));
  }

  /** A call on the strip of a bone's history. */
  String of(Call call, CallHistory history) {
    boolean taken = call.kind() != Call.Kind.WITHDRAWAL && !history.standing().contains(call);
    boolean holds = history.holding().filter(call::equals).isPresent();
    List<String> parts = new ArrayList<>();
    String basis = basis(call);
    String named =
        say(
            "call",
            call.id(),
            word("kind", call.kind()),
            call.answers().map(id -> say("call.on", id)).orElse(""),
            call.written());
    parts.add(basis.isBlank() ? named : say("rests", named, basis));
    parts.add(say(call.sawSuggestion() ? "seen" : "seen.not"));
    if (taken) {
      parts.add(say("taken"));
    }
    if (holds) {
      parts.add(say("holds"));
    }
    return String.join("; ", parts);
  }

  /** A word on the element on the strip of a bone's history. */
  String of(ElementCall call) {
    String said =
        say(
            call.look().isPresent() ? "element.look" : "element",
            word("side", call.side()),
            elements.of(call.element()),
            word("portion", call.portion()),
            call.look().orElse(0L));
    return call.basis().isBlank() ? said : say("rests", said, call.basis());
  }

  /** A bone set aside or opened again, on the strip of its history. */
  String of(Stop stop) {
    String said = word("stop", stop.kind());
    return stop.reason().isBlank() ? said : say("reason", said, stop.reason());
  }

  /** What a call rests on, in one line; empty where nothing was said. */
  public String basis(Call call) {
    Grounds grounds = call.grounds();
    List<String> parts = new ArrayList<>();
    if (!call.basis().isBlank()) {
      parts.add(call.basis());
    }
    if (grounds.how() != Grounds.How.NOT_SAID) {
      parts.add(word("how", grounds.how()));
    }
    if (!grounds.comparedWith().isEmpty()) {
      parts.add(
          say(
              "compared",
              grounds.comparedWith().stream()
                  .map(AnimalId::value)
                  .collect(Collectors.joining(", "))));
    }
    grounds.traits().forEach(t -> parts.add(say("trait", t.trait(), word("trait", t.seen()))));
    if (!grounds.why().isBlank()) {
      parts.add(say("why", grounds.why()));
    }
    return String.join("; ", parts);
  }

  private String word(String kind, Enum<?> value) {
    return bundle.getString(kind + "." + value.name().toLowerCase(Locale.ROOT));
  }

  /** The text of a key, its places filled; numbers of calls are written without grouping. */
  private String say(String key, Object... places) {
    Object[] plain = java.util.Arrays.stream(places).map(String::valueOf).toArray(Object[]::new);
    return new MessageFormat(bundle.getString(key), Locale.ROOT).format(plain);
  }
}
