/** The Second Look screen: who waits for another pair of eyes, a look taken blind, agreement. */
@NullMarked
package org.comparanda.gui.secondlook;

import org.jspecify.annotations.NullMarked;
