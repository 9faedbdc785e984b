/** Tables for a spreadsheet, in which no cell can become a formula. */
@NullMarked
package org.comparanda.exchange.csv;

import org.jspecify.annotations.NullMarked;
