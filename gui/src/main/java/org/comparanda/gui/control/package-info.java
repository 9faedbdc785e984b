/** Our own controls, without domain logic: they draw plain records and report what was pressed. */
@NullMarked
package org.comparanda.gui.control;

import org.jspecify.annotations.NullMarked;
