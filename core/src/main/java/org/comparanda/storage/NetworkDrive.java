package org.comparanda.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Tells whether a file lies on a drive of another computer, where a log can't be kept safely. */
final class NetworkDrive {
  /** Names that operating systems give to network file systems. */
  private static final Set<String> TYPES =
      Set.of(
          "nfs",
          "nfs4",
          "cifs",
          "smb",
          "smb2",
          "smb3",
          "smbfs",
          "afpfs",
          "webdav",
          "davfs",
          "fuse.sshfs",
          "fuse.davfs",
          "fuse.rclone",
          "fuse.glusterfs",
          "9p",
          "ceph",
          "afs",
          "ncpfs");

  private NetworkDrive() {}

  /** What to say about the place of this file; empty when it is a disk of this computer. */
  static Optional<String> caution(Path file) throws IOException {
    return caution(file, Files.getFileStore(file).type());
  }

  static Optional<String> caution(Path file, String type) {
    boolean shareOfAnother = file.toString().startsWith("\\\\");
    if (!shareOfAnother && !TYPES.contains(type.toLowerCase(Locale.ROOT))) {
      return Optional.empty();
    }
    return Optional.of(
        "\""
            + file
            + "\" lies on a network drive ("
            + type
            + "). A power cut or a lost connection there can damage it. Keep the collection on a"
            + " disk of this computer and its backups on the network drive.");
  }
}
