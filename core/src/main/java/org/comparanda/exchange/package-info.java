/** What comes in and goes out: tables, JSON. */
@NullMarked
package org.comparanda.exchange;

import org.jspecify.annotations.NullMarked;
