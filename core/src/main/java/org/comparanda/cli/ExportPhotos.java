package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.dossier.HeldAnimals;
import org.comparanda.dossier.HeldBack;
import org.comparanda.dossier.Openness;
import org.comparanda.exchange.csv.PhotoList;
import org.comparanda.photo.Photo;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.photo.Picture;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Copies of pictures without what a camera wrote beside them. */
@Command(
    name = "photos",
    description = {
      "Copy the pictures of bones that go out and of the shelf's animals into a folder, with a list.",
      "Copies lose position, owner and every other tag; the stored pictures are never altered."
    },
    mixinStandardHelpOptions = true)
final class ExportPhotos implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "OUT-FOLDER", description = "The folder; it must be new or empty.")
  private Path out = Path.of("");

  @Mixin private ExportedBones exported = new ExportedBones();

  ExportPhotos(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    emptyFolder();
    List<PhotoList.Line> lines = new ArrayList<>();
    HeldBack bones;
    HeldAnimals animals;
    int lost = 0;
    try (Collection opened = exported.open(terminal)) {
      bones = exported.bonesIfAny(opened);
      List<Photo> all = opened.photos().all();
      animals = animals(opened, all, bones.openness());
      for (Photo photo : open(all, bones, animals)) {
        Path stored = opened.photos().file(photo);
        if (Files.isRegularFile(stored)) {
          lines.add(copy(photo, stored, lines.size() + 1));
        } else {
          lost++;
          terminal.note(
              "The picture " + stored + " is not there any more; it was left out of the copies.");
        }
      }
    }
    Files.writeString(out.resolve("photos.csv"), PhotoList.csv(lines));
    terminal.say(
        "Wrote "
            + Count.of(lines.size(), "picture")
            + " without position tags and photos.csv into "
            + out
            + "; "
            + bones.sentence()
            + "; of the animals with pictures "
            + animals.sentence()
            + ".");
    return lost == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  private void emptyFolder() throws IOException {
    Files.createDirectories(out);
    try (var inside = Files.list(out)) {
      if (inside.findAny().isPresent()) {
        throw new CannotDo(
            "\"" + out + "\" holds files already. Nothing was written. Name a new folder.");
      }
    }
  }

  /** The animals that have pictures, restricted ones open where a person with the right says so. */
  private static HeldAnimals animals(Collection opened, List<Photo> all, Openness openness) {
    Set<PhotoSubject> pictured =
        all.stream().map(Photo::subject).collect(Collectors.toUnmodifiableSet());
    return HeldAnimals.of(
        opened.register().all().stream()
            .filter(card -> pictured.contains(PhotoSubject.of(card.id())))
            .toList(),
        openness.restrictedBy().isPresent()
            ? HeldAnimals.Restricted.OPENED
            : HeldAnimals.Restricted.HELD_BACK);
  }

  private static List<Photo> open(List<Photo> all, HeldBack bones, HeldAnimals animals) {
    Set<PhotoSubject> subjects = new HashSet<>();
    bones.open().forEach(d -> subjects.add(PhotoSubject.of(d.bone().id())));
    animals.open().forEach(card -> subjects.add(PhotoSubject.of(card.id())));
    return all.stream().filter(photo -> subjects.contains(photo.subject())).toList();
  }

  private PhotoList.Line copy(Photo photo, Path stored, int running) throws IOException {
    Picture picture =
        Picture.read(Files.readAllBytes(stored))
            .fold(
                read -> read,
                none -> {
                  throw new CannotDo(
                      "The stored picture \"" + stored + "\" was damaged: " + none.reason());
                });
    byte[] without = picture.withoutTags();
    String name = String.format(Locale.ROOT, "photo-%04d%s", running, photo.form().ending());
    Files.write(out.resolve(name), without);
    String copyHash =
        Picture.read(without)
            .fold(
                Picture::hash,
                none -> {
                  throw new IllegalStateException(none.reason());
                });
    return new PhotoList.Line(
        photo.subject() instanceof PhotoSubject.OfBone ? "bone" : "animal",
        number(photo.subject()),
        name,
        picture.hash(),
        copyHash,
        photo.at().toString());
  }

  private static String number(PhotoSubject subject) {
    if (subject instanceof PhotoSubject.OfAnimal animal) {
      return animal.animal().value();
    }
    return subject instanceof PhotoSubject.OfBone bone ? bone.bone().value() : "";
  }
}
