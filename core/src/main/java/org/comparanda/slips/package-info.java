/** Labels, cards, lists and reports as PDF, for paper that lies with the bone. */
@NullMarked
package org.comparanda.slips;

import org.jspecify.annotations.NullMarked;
