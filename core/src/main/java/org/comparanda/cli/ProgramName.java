package org.comparanda.cli;

import java.util.Optional;
import org.comparanda.exchange.json.ProgramVersion;
import picocli.CommandLine.IVersionProvider;

/** Name and version, as written into every result. */
final class ProgramName implements IVersionProvider {
  static ProgramVersion current() {
    return new ProgramVersion(
        "Comparanda",
        Optional.ofNullable(ProgramName.class.getPackage().getImplementationVersion())
            .orElse("development"));
  }

  @Override
  public String[] getVersion() {
    return new String[] {current().program() + " " + current().version()};
  }
}
