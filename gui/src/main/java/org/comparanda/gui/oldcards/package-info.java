/** Old Cards: legacy lists as found, what each card seems to say, and a person's decision. */
@NullMarked
package org.comparanda.gui.oldcards;

import org.jspecify.annotations.NullMarked;
