package org.comparanda.register;

import java.util.Locale;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.reference.ShelfBone;

/** Which bone of a skeleton: an animal has one bone at a place. */
public record BonePlace(ElementKey element, Side side, Portion portion) {
  public static BonePlace of(ShelfBone bone) {
    return new BonePlace(bone.element(), bone.side(), bone.portion());
  }

  /** Whether an element of this symmetry has such a side. */
  boolean fits(Element known) {
    return (known.symmetry() == Symmetry.AXIAL) == (side == Side.AXIAL);
  }

  /** As the Day Book and the command line say it: element, side, portion where it is not whole. */
  public String words() {
    return element + " " + lower(side) + (portion == Portion.WHOLE ? "" : " " + lower(portion));
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
