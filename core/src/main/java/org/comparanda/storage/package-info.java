/**
 * The collection's file: SQLite behind the repository interfaces, durable before it answers. No
 * other package knows SQL.
 */
@NullMarked
package org.comparanda.storage;

import org.jspecify.annotations.NullMarked;
