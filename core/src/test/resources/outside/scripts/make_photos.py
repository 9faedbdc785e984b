# Makes the two invented pictures of outside/photos with Pillow, position tags and all.
from PIL import Image, PngImagePlugin
import sys, os
out = sys.argv[1]
im = Image.new("RGB", (48, 32))
im.putdata([((x * 5) % 256, (y * 7) % 256, (x * y) % 256) for y in range(32) for x in range(48)])
exif = Image.Exif()
exif[0x0112] = 6  # orientation: turned
exif[0x010F] = "Invented camera"
gps = exif.get_ifd(0x8825)
gps[1] = "N"; gps[2] = (51.0, 30.0, 12.5); gps[3] = "W"; gps[4] = (0.0, 7.0, 39.9)
xmp = b'<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="51,30.2083N"/></rdf:RDF></x:xmpmeta>'
im.save(os.path.join(out, "gps.jpg"), quality=90, exif=exif, xmp=xmp, comment=b"found at 51.5034 N")
info = PngImagePlugin.PngInfo()
info.add_text("Comment", "found at 51.5034 N")
info.add_itxt("XML:com.adobe.xmp", xmp.decode())
im.save(os.path.join(out, "gps.png"), exif=exif, pnginfo=info)
for f in ("gps.jpg", "gps.png"):
    e = Image.open(os.path.join(out, f)).getexif()
    print(f, dict(e.get_ifd(0x8825)), e.get(0x0112))
