package org.comparanda.tally;

import org.comparanda.bone.ElementKey;
import org.comparanda.statistics.Outcome;

/**
 * The counts of one element of one taxon at one place.
 *
 * @param nisp number of identified specimens
 * @param mne minimum number of elements: left, right and unsided added
 * @param mau MNE divided by the element's number in one skeleton, sides ignored; not estimable
 *     where that number isn't known
 */
public record ElementTally(ElementKey element, int nisp, int mne, Outcome<Double> mau) {}
