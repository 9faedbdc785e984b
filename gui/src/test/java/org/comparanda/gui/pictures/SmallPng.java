package org.comparanda.gui.pictures;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.Image;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes a picture as PNG without transparency and packed as tightly as the format allows. */
final class SmallPng {
  private static final long MOST = 200_000; // bytes of a picture in docs

  private SmallPng() {}

  static void write(Image image, Path file) throws IOException {
    BufferedImage seen = SwingFXUtils.fromFXImage(image, null);
    BufferedImage solid =
        new BufferedImage(seen.getWidth(), seen.getHeight(), BufferedImage.TYPE_INT_RGB);
    solid.createGraphics().drawImage(seen, 0, 0, null);
    pack(solid, file);
    if (Files.size(file) > MOST) {
      coarsen(solid);
      pack(solid, file);
    }
  }

  /** 32 steps a channel in place of 256: soft edges cost less, and the eye sees the same. */
  private static void coarsen(BufferedImage image) {
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int steps = image.getRGB(x, y) & 0xF8F8F8;
        image.setRGB(x, y, steps | ((steps >> 5) & 0x070707));
      }
    }
  }

  private static void pack(BufferedImage solid, Path file) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ImageWriteParam packing = writer.getDefaultWriteParam();
    packing.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    packing.setCompressionQuality(0);
    try (OutputStream bytes = Files.newOutputStream(file);
        ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(solid, null, null), packing);
    } finally {
      writer.dispose();
    }
  }
}
