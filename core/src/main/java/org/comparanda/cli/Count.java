package org.comparanda.cli;

/** So many of a thing, in words. */
final class Count {
  private Count() {}

  /** One bone, two bones; another plural is given in full. */
  static String of(long n, String noun) {
    return of(n, noun, noun + "s");
  }

  static String of(long n, String one, String many) {
    return n + " " + (n == 1 ? one : many);
  }
}
