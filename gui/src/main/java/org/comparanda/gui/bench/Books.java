package org.comparanda.gui.bench;

import org.comparanda.house.HouseRules;
import org.comparanda.photo.Photos;
import org.comparanda.tray.Associations;
import org.comparanda.tray.KeptAnswers;
import org.comparanda.tray.Keying;
import org.comparanda.tray.Numbering;
import org.comparanda.tray.Refits;
import org.comparanda.tray.Stops;

/**
 * What the Bench keeps beside trays and readings.
 *
 * @param numbering bone numbers by rule
 * @param keying batch and pair under way
 * @param associations bones found together
 * @param refits bones in pieces
 * @param photos pictures of bones
 * @param answers answers kept beside calls
 * @param stops bones set aside as possibly human
 * @param rules of the house: its contact card
 */
public record Books(
    Numbering numbering,
    Keying keying,
    Associations associations,
    Refits refits,
    Photos photos,
    KeptAnswers answers,
    Stops stops,
    HouseRules rules) {}
