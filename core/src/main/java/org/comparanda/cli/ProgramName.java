package org.comparanda.cli;

import org.comparanda.exchange.json.ProgramVersion;
import picocli.CommandLine.IVersionProvider;

/** Name and version, as written into every result. */
final class ProgramName implements IVersionProvider {
  static ProgramVersion current() {
    return ProgramVersion.current();
  }

  @Override
  public String[] getVersion() {
    return new String[] {current().written()};
  }
}
