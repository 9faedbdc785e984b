package org.comparanda.exchange.json;

import java.util.Optional;

/** Which program wrote something, and which version of it. */
public record ProgramVersion(String program, String version) {
  /** This program, as its jar says; "development" where it runs from loose classes. */
  public static ProgramVersion current() {
    return new ProgramVersion(
        "Comparanda",
        Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
            .orElse("development"));
  }

  /** "Comparanda 0.1.0". */
  public String written() {
    return program + " " + version;
  }
}
