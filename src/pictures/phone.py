"""What an invented phone writes: a JPEG turned as it was held, and its EXIF."""

import subprocess

import numpy as np

QUALITY = 86
PHONE = {"Make": "Quillon", "Model": "Q2 Compact", "Software": "Q2 4.1.7", "SerialNumber": "Q2-000417"}
# How the stored pixels are turned for each EXIF orientation, so that a reader who obeys it sees them upright.
TURNS = {
    1: [],
    2: ["-flop"],
    3: ["-rotate", "180"],
    4: ["-flip"],
    5: ["-transpose"],
    6: ["-rotate", "270"],
    7: ["-transverse"],
    8: ["-rotate", "90"],
}


def jpeg(image, path, orientation):
    """`image`: display values 0 to 1, first row at the bottom."""
    h, w = image.shape[:2]
    pixels = (image[::-1] * 255 + 0.5).astype(np.uint8)
    ppm = b"P6 %d %d 255\n" % (w, h) + pixels.tobytes()
    path.parent.mkdir(parents=True, exist_ok=True)
    sharpen = ["-unsharp", "0x0.8+0.4+0.01", *TURNS[orientation]]
    out = ["-sampling-factor", "4:2:0", "-quality", str(QUALITY), f"jpg:{path}"]
    subprocess.run(["convert", "ppm:-", *sharpen, *out], input=ppm, check=True)


def exif(shot, path, iso, dark):
    """Writes what a phone writes, a thumbnail included."""
    times = ("DateTimeOriginal", "CreateDate", "ModifyDate")
    tags = {**PHONE, **{tag: shot.taken for tag in times}, "Orientation#": shot.orientation}
    tags |= {"OffsetTimeOriginal": shot.zone, "OffsetTime": shot.zone, "FNumber": 1.8, "ISO": iso}
    tags |= {"ExposureTime": "1/25" if dark else "1/60", "FocalLength": 4.3, "FocalLengthIn35mmFormat": 26}
    tags |= {"ColorSpace#": 1}
    if shot.position:
        lat, lon = shot.position
        tags |= {"GPSLatitude": abs(lat), "GPSLatitudeRef": "N" if lat > 0 else "S"}
        tags |= {"GPSLongitude": abs(lon), "GPSLongitudeRef": "E" if lon > 0 else "W"}
    thumbnail = path.with_suffix(".thumbnail")
    small = ["-thumbnail", "160x160", "-quality", "60"]
    subprocess.run(["convert", str(path), *small, f"jpg:{thumbnail}"], check=True)
    arguments = [f"-{tag}={value}" for tag, value in tags.items()]
    arguments += [f"-ThumbnailImage<={thumbnail}", str(path)]
    subprocess.run(["exiftool", "-q", "-overwrite_original", *arguments], check=True)
    thumbnail.unlink()
