package org.comparanda.gui.calling;

import java.util.Locale;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.ElementNames;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Protocol;
import org.comparanda.tray.TrayBone;

/** Bones and people in words. */
public final class BoneWords {
  private final Words words;
  private final Protocol protocol;
  private final People people;
  private final ElementNames names;

  public BoneWords(Locale locale, Protocol protocol, People people) {
    this.words = Words.of("calling", locale);
    this.protocol = protocol;
    this.people = people;
    this.names = ElementNames.in(locale);
  }

  String get(String key, Object... places) {
    return words.get(key, places);
  }

  /** One of our enums: its kind, a dot, its name in small letters. */
  public String word(String kind, Enum<?> value) {
    return words.get(kind + "." + value.name().toLowerCase(Locale.ROOT));
  }

  /** Side, element and portion of a bone. */
  public String what(TrayBone bone) {
    return what(bone.element(), bone.side(), bone.portion());
  }

  /** Side, element and portion; the side only where it is left or right. */
  public String what(ElementKey element, Side side, Portion portion) {
    String sided = side == Side.LEFT || side == Side.RIGHT ? word("side", side) + " " : "";
    return sided + element(element) + ", " + word("portion", portion);
  }

  /** Name of an element. */
  public String element(ElementKey key) {
    return protocol.element(key).map(names::of).orElse(key.value());
  }

  String element(Element element) {
    return names.of(element);
  }

  /** A person's name, or the id where no name is kept. */
  public String who(PersonId id) {
    return people.person(id).map(Person::name).filter(name -> !name.isBlank()).orElse(id.value());
  }
}
