package org.comparanda.exchange.table;

/** What a table is read as. */
enum TableUse {
  SHELF,
  BONES_IN_HAND,
  HEAP
}
