package org.comparanda.storage;

import java.nio.file.Path;

/**
 * A collection's file could not be opened, made, read or written. The message is for the person at
 * the bench: what happened, where, what became of the data, what to do.
 */
public final class CollectionProblem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Kind kind;

  /** What is wrong with the file. */
  public enum Kind {
    MISSING,
    EXISTS,
    WRONG_NAME,
    FOREIGN,
    NEWER,
    DAMAGED,
    LOCKED,
    NOT_READABLE,
    NOT_WRITABLE,
    FULL,
    SETTINGS
  }

  private CollectionProblem(Kind kind, String message) {
    super(message);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }

  static CollectionProblem missing(Path file) {
    return new CollectionProblem(
        Kind.MISSING,
        "There is no collection \""
            + file
            + "\". Nothing was changed. Check the name, or make a new collection there.");
  }

  static CollectionProblem exists(Path file) {
    return new CollectionProblem(
        Kind.EXISTS,
        "\"" + file + "\" exists already. It was left as it is. Open it, or choose another name.");
  }

  static CollectionProblem wrongName(Path file) {
    return new CollectionProblem(
        Kind.WRONG_NAME,
        "\""
            + file
            + "\" does not end in "
            + Collection.ENDING
            + ". Nothing was made. Choose a name with that ending.");
  }

  static CollectionProblem foreign(Path file, String seen) {
    return new CollectionProblem(
        Kind.FOREIGN,
        "\""
            + file
            + "\" is not a Comparanda collection: "
            + seen
            + ". It was left as it is. Choose a file ending in "
            + Collection.ENDING
            + "; a table of bones is brought in by import.");
  }

  static CollectionProblem foreignRow(String name) {
    return new CollectionProblem(
        Kind.FOREIGN,
        "The copy holds \""
            + name
            + "\", which a collection of this version doesn't have. Nothing was restored. Restore it"
            + " with the version that wrote it.");
  }

  static CollectionProblem copyDiffers(Path file) {
    return new CollectionProblem(
        Kind.DAMAGED,
        "The copy of \""
            + file
            + "\" is not equal to what it was made from (its content hash differs). It was not kept."
            + " Try again, and check the disk.");
  }

  static CollectionProblem newer(Path file, int found, int known) {
    return new CollectionProblem(
        Kind.NEWER,
        "\""
            + file
            + "\" was written by a newer version of this program (form "
            + found
            + ", this version knows up to "
            + known
            + "). It was left as it is. Open it with the newer version.");
  }

  static CollectionProblem damaged(Path file, String found) {
    return new CollectionProblem(
        Kind.DAMAGED,
        "\""
            + file
            + "\" is damaged ("
            + found
            + "). It was left as it is. Keep this file and restore the latest backup beside it.");
  }

  static CollectionProblem locked(Path file) {
    return new CollectionProblem(
        Kind.LOCKED,
        "\""
            + file
            + "\" is being written by another program. Nothing was changed. Wait until that is"
            + " done or close it, then try again.");
  }

  static CollectionProblem notReadable(Path file) {
    return new CollectionProblem(
        Kind.NOT_READABLE,
        "\""
            + file
            + "\" can't be read. Nothing was changed. Check the rights on the file and whether its"
            + " disk is there.");
  }

  static CollectionProblem notWritable(Path file) {
    return new CollectionProblem(
        Kind.NOT_WRITABLE,
        "\""
            + file
            + "\" can't be written here. Nothing was changed. Check the rights on the file and"
            + " its folder, or choose another folder.");
  }

  static CollectionProblem full(Path file) {
    return new CollectionProblem(
        Kind.FULL,
        "The disk of \""
            + file
            + "\" is full. What was being stored was not stored; all that was stored before is"
            + " safe. Make room, then try again.");
  }

  static CollectionProblem settings(Path file, String found) {
    return new CollectionProblem(
        Kind.SETTINGS,
        "\""
            + file
            + "\" can't be kept safely here ("
            + found
            + "). Nothing was changed. Put the file on a disk of this computer.");
  }
}
