package org.comparanda.house;

import java.util.Locale;
import java.util.Optional;

/** A rule that the house may set, and what holds until it does. */
public enum RuleName {
  /** Whom to call when a bone may be human; shown at once. */
  CONTACT_CARD(
      "No contact is set yet in House Rules. Leave the bone where it is, cover it, take no picture,"
          + " tell the person responsible for the collection. Local law decides what comes next."),
  /** Every nth called bone is looked at again. */
  SECOND_LOOK_EVERY("10"),
  /** Below this typicality a call is looked at again. */
  SECOND_LOOK_TYPICALITY("0.05");

  private final String untilSet;

  RuleName(String untilSet) {
    this.untilSet = untilSet;
  }

  /** What holds while the house has set nothing. */
  public String untilSet() {
    return untilSet;
  }

  /** Why this content can't be taken; empty when it can. */
  public Optional<String> refusal(String content) {
    boolean sound =
        switch (this) {
          case CONTACT_CARD -> !content.isBlank();
          case SECOND_LOOK_EVERY -> content.matches("[1-9][0-9]{0,3}");
          case SECOND_LOOK_TYPICALITY -> content.matches("0?\\.[0-9]{1,6}");
        };
    return sound
        ? Optional.empty()
        : Optional.of(
            "\""
                + content
                + "\" is no "
                + switch (this) {
                  case CONTACT_CARD -> "contact card.";
                  case SECOND_LOOK_EVERY -> "whole number from 1 to 9999.";
                  case SECOND_LOOK_TYPICALITY -> "number between 0 and 1.";
                });
  }

  /** As it is written in a terminal: contact-card. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
