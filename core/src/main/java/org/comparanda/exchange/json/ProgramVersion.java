package org.comparanda.exchange.json;

/** Which program wrote something, and which version of it. */
public record ProgramVersion(String program, String version) {}
