/** Who may do what in the house, given by whom; and the rules that the house sets itself. */
@NullMarked
package org.comparanda.house;

import org.jspecify.annotations.NullMarked;
