package org.comparanda.house;

/** What a person may do beyond measuring and calling. */
public enum Right {
  /** Gives and withdraws rights, sets priorities, restrictions and rules of the house. */
  KEEPER,
  /** Lets exact places out of the house. */
  OPEN_PLACES,
  /** Opens a bone again that was set aside as possibly human. */
  OPEN_STOP,
  /** Lets restricted bones out of the house. */
  OPEN_RESTRICTED
}
