package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lines of {@code strace -f -y}: process, call, path of the file. A call interrupted by another
 * thread's line is "unfinished" and later "resumed".
 */
record SystemCalls(List<String> lines) {
  private static final Pattern LINE = Pattern.compile("^(\\d+)\\s+(.*)$");

  /** How many answers were written, each after a write of the log and a completed sync of it. */
  int answersAfterASync() {
    Set<String> syncing = new HashSet<>();
    boolean written = false;
    boolean synced = false;
    int answers = 0;
    for (String line : lines) {
      Matcher parts = LINE.matcher(line);
      if (!parts.matches()) {
        continue;
      }
      String thread = parts.group(1);
      String call = parts.group(2);
      boolean ofTheLog = call.contains("-wal>");
      boolean sync = call.startsWith("fdatasync(") || call.startsWith("fsync(");
      if (call.startsWith("pwrite64(") && ofTheLog) {
        written = true;
        synced = false;
      } else if (sync && ofTheLog && call.contains("unfinished")) {
        syncing.add(thread);
      } else if (sync && ofTheLog && call.endsWith("= 0")) {
        synced = written;
      } else if (call.matches("<\\.\\.\\. fd?a?t?a?sync resumed>.*= 0") && syncing.remove(thread)) {
        synced = written;
      } else if (call.startsWith("write(1<") && call.contains("accepted ")) {
        assertTrue(written && synced, "answered before the sync: " + line);
        written = false;
        answers++;
      }
    }
    return answers;
  }
}
