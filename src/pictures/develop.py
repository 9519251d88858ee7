"""From the renderer's passes to a phone's JPEG: denoise, lens, sensor, orientation, EXIF.

Pictures are float arrays of height x width x 3, linear light, first row at the bottom, as Blender has them.
"""

import subprocess
from pathlib import Path

import numpy as np

QUALITY = 86
PHONE = {"Make": "Quillon", "Model": "Q2 Compact", "Software": "Q2 4.1.7"}  # invented
TURNS = {1: 0, 3: 180, 6: 270, 8: 90}  # clockwise degrees the stored pixels are turned by


def _shifted(a, dy, dx):
    h, w = a.shape[:2]
    return a[np.clip(np.arange(h) + dy, 0, h - 1)][:, np.clip(np.arange(w) + dx, 0, w - 1)]


def _around(a):
    return [_shifted(a, dy, dx) for dy in (-1, 0, 1) for dx in (-1, 0, 1)]


def denoise(image, albedo, normals, depth, levels=4, strictness=1.2):
    """An edge-avoiding a-trous wavelet on the light alone, without the surface colour: grain survives.

    After Dammertz et al., "Edge-Avoiding A-Trous Wavelet Transform for fast Global Illumination
    Filtering", High Performance Graphics 2010 (from memory; the weights are our own).
    """
    surface = np.maximum(albedo, 0.0) + 0.15
    light = image / surface
    brightness = light.mean(-1)
    ceiling = np.median(np.stack(_around(brightness)), 0) * 3 + 0.05
    light = light * np.minimum(1, ceiling / (brightness + 1e-6))[..., None]
    unit = normals / (np.sqrt((normals * normals).sum(-1, keepdims=True)) + 1e-5)
    for level in range(levels):
        step = 2**level
        total, weight = light.copy(), np.ones(light.shape[:2], np.float32)
        log = np.log(sum(_around(light.mean(-1))) / 9 + 0.02)
        for dy, dx in ((a, b) for a in (-1, 0, 1) for b in (-1, 0, 1) if a or b):
            by = dy * step, dx * step
            w = np.clip((unit * _shifted(unit, *by)).sum(-1), 0, 1) ** (10 if level == 0 else 40)
            w *= np.exp(-np.abs(depth - _shifted(depth, *by)) / (depth * 0.012 * step + 1e-3))
            w *= np.exp(-np.abs(log - _shifted(log, *by)) * strictness * 1.5**level)
            w *= np.exp(-np.abs(albedo - _shifted(albedo, *by)).sum(-1) * 1.5)
            w *= 0.25 if dy and dx else 0.5
            total += _shifted(light, *by) * w[..., None]
            weight += w
        light = (total / weight[..., None]).astype(np.float32)
        if level < 2:  # pixels of an outline find no neighbour like themselves
            lonely = weight < 1.7
            light[lonely] = np.median(np.stack(_around(light)), 0)[lonely]
    return light * surface


def _blur(a, radius):
    for axis in (0, 1):
        for _ in range(3):
            edges = [(radius + 1, radius) if i == axis else (0, 0) for i in range(3)]
            run = np.cumsum(np.pad(a, edges, mode="edge"), axis, dtype=np.float64)
            n, span = a.shape[axis], 2 * radius + 1
            a = ((np.take(run, range(span, span + n), axis) - np.take(run, range(n), axis)) / span).astype(
                np.float32
            )
    return a


def lens(image):
    """Glow round the highlights, darker corners."""
    h, w = image.shape[:2]
    bright = np.clip(image - 1.2, 0, 6)
    image = image + 0.10 * _blur(bright, max(2, w // 60)) + 0.05 * _blur(bright, max(2, w // 220))
    y, x = np.mgrid[-1 : 1 : h * 1j, -1 : 1 : w * 1j]
    r2 = (x * x + y * y * 0.5625) / 1.5625
    return image * (1 - 0.38 * r2**1.2)[..., None]


def sensor(image, seed):
    """Grain in light and colour; `image` and the result are display values 0 to 1."""
    h, w = image.shape[:2]
    rng = np.random.default_rng(seed)
    grain = rng.normal(0, 1, (h, w, 1)) * 0.7 + _blur(rng.normal(0, 1, (h, w, 1)).astype(np.float32), 1) * 2.2
    colour = _blur(rng.normal(0, 1, (h, w, 3)).astype(np.float32), 2) * 3
    amount = 0.013 * (1.15 - image.mean(-1, keepdims=True))
    return np.clip(image + grain * amount + colour * amount * 0.55, 0, 1)


def jpeg(image, path: Path, orientation):
    h, w = image.shape[:2]
    pixels = (image[::-1] * 255 + 0.5).astype(np.uint8)
    ppm = b"P6 %d %d 255\n" % (w, h) + pixels.tobytes()
    path.parent.mkdir(parents=True, exist_ok=True)
    sharpen = ["-unsharp", "0x0.8+0.3+0.01", "-rotate", str(TURNS[orientation])]
    out = ["-sampling-factor", "4:2:0", "-quality", str(QUALITY), f"jpg:{path}"]
    subprocess.run(["convert", "ppm:-", *sharpen, *out], input=ppm, check=True)


def exif(shot, path: Path):
    """Writes what a phone writes, a thumbnail included."""
    if not shot.exif:
        return
    tags = {
        **PHONE,
        "Orientation#": shot.orientation,
        "DateTimeOriginal": shot.taken,
        "CreateDate": shot.taken,
        "ModifyDate": shot.taken,
    }
    tags |= {
        "OffsetTimeOriginal": shot.zone,
        "OffsetTime": shot.zone,
        "FNumber": 1.8,
        "ISO": 320,
        "ExposureTime": "1/33",
    }
    tags |= {"FocalLength": 4.3, "FocalLengthIn35mmFormat": 26, "ColorSpace#": 1, "SerialNumber": "Q2-000417"}
    if shot.position:
        lat, lon = shot.position
        tags |= {"GPSLatitude": abs(lat), "GPSLatitudeRef": "N" if lat > 0 else "S"}
        tags |= {"GPSLongitude": abs(lon), "GPSLongitudeRef": "E" if lon > 0 else "W"}
    thumbnail = path.with_suffix(".thumbnail")
    subprocess.run(
        ["convert", str(path), "-thumbnail", "160x160", "-quality", "60", f"jpg:{thumbnail}"], check=True
    )
    arguments = [f"-{tag}={value}" for tag, value in tags.items()]
    subprocess.run(
        ["exiftool", "-q", "-overwrite_original", *arguments, f"-ThumbnailImage<={thumbnail}", str(path)],
        check=True,
    )
    thumbnail.unlink()
