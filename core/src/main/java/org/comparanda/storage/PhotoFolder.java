package org.comparanda.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.photo.Photo;
import org.comparanda.photo.Picture;
import org.comparanda.photo.PictureForm;

/**
 * The pictures of a collection: the folder beside its file that has its name and ends in {@code
 * .photos}, each picture under the hash of its content.
 *
 * @param collection the collection's file
 */
record PhotoFolder(Path collection) {
  private Path folder() {
    String name = String.valueOf(collection.getFileName());
    String bare =
        name.endsWith(Collection.ENDING)
            ? name.substring(0, name.length() - Collection.ENDING.length())
            : name;
    return collection.resolveSibling(bare + ".photos");
  }

  Path place(String hash, PictureForm form) {
    return folder().resolve(hash.substring(0, 2)).resolve(hash + form.ending());
  }

  /** A small copy for lists, which can be made anew at any time. */
  Path thumbnail(String hash) {
    return folder().resolve("thumbnails").resolve(hash.substring(0, 2)).resolve(hash + ".png");
  }

  /** Whole under its name or not at all, and on the disk when this returns. */
  void store(String hash, PictureForm form, byte[] picture) {
    Path place = place(hash, form);
    if (Files.exists(place)) {
      return;
    }
    try {
      Path folder = place.resolveSibling("");
      Files.createDirectories(folder);
      Path unfinished = Files.createTempFile(folder, "unfinished", form.ending());
      try {
        try (FileChannel out = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
          ByteBuffer bytes = ByteBuffer.wrap(picture);
          while (bytes.hasRemaining()) {
            out.write(bytes);
          }
          out.force(true);
        }
        Files.move(unfinished, place, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (IOException problem) {
      throw CollectionProblem.notWritable(place);
    }
  }

  /** Copies these pictures, each checked against its hash; says which could not be copied. */
  PhotoCopies copyTo(PhotoFolder other, List<Photo> photos) {
    Map<String, Photo> once = new LinkedHashMap<>();
    photos.forEach(photo -> once.putIfAbsent(photo.hash(), photo));
    List<String> problems = new ArrayList<>();
    for (Photo photo : once.values()) {
      Path from = place(photo.hash(), photo.form());
      try {
        if (!Files.isRegularFile(from)) {
          problems.add(from + " is gone: \"" + photo.name() + "\" could not be copied.");
        } else if (!sound(Files.readAllBytes(from), photo.hash())) {
          problems.add(from + " was altered: \"" + photo.name() + "\" was not copied.");
        } else {
          other.store(photo.hash(), photo.form(), Files.readAllBytes(from));
        }
      } catch (IOException unreadable) {
        problems.add(from + " can't be read: \"" + photo.name() + "\" could not be copied.");
      }
    }
    return new PhotoCopies(once.size() - problems.size(), problems);
  }

  private static boolean sound(byte[] bytes, String hash) {
    return Picture.read(bytes).value().filter(picture -> picture.hash().equals(hash)).isPresent();
  }
}
