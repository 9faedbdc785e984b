package org.comparanda.sizeestimate;

/**
 * Two bones of a lot that can hardly be one animal.
 *
 * @param one label of the first bone
 * @param other label of the second
 * @param chance of so large a disagreement within one animal of the shelf
 * @param sentence in words
 */
public record SizesDisagree(String one, String other, double chance, String sentence) {}
