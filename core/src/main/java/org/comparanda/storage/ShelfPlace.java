package org.comparanda.storage;

/** Where a value of the shelf stands. */
record ShelfPlace(String animal, int position, String code) {}
