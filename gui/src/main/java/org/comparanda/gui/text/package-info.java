/** Words of the screens in the person's language, and numbers in the person's notation. */
@NullMarked
package org.comparanda.gui.text;

import org.jspecify.annotations.NullMarked;
