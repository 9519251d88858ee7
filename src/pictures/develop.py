"""From the renderer's passes to a phone's JPEG: noise, lens, sensor, film curve, orientation, EXIF.

    python3 develop.py PASSES JOURNAL [NAME ...]

Makes the JPEG of every pass file that is newer than its picture, or of the scenes named.
Pictures are float arrays of height x width x 3, linear light, first row at the bottom, as Blender has them.
"""

import json
import sys
from pathlib import Path

import numpy as np

from denoise import box_blur, denoised
from phone import exif, jpeg
from shots import SHOTS


def main(passes, journal, *names):
    for shot in SHOTS:
        source, path = Path(passes) / f"{shot.name}.npz", Path(journal) / shot.path
        stale = source.exists() and (not path.exists() or path.stat().st_mtime < source.stat().st_mtime)
        if shot.name in names or (stale and not names):
            develop(shot, source, path)
            print(f"{shot.name}: {path.stat().st_size // 1000} kB", flush=True)


def develop(shot, source, path):
    layers = np.load(source)
    view = json.loads(str(layers["notes"]))
    colour, normal, depth = (layers[name].astype(np.float32) for name in ("colour", "normal", "depth"))
    image = denoised(layers["light"].astype(np.float32), colour, normal, depth)
    image = focused(image, depth, view)
    image = shaken(glowing(image), *view["shake"])
    if view["thumb"]:
        image = thumbed(image)
    middle = float(np.exp(np.log(image.mean(-1) + 1e-3).mean()))  # log average: what the meter sees
    gain = 0.235 / middle**0.72 * 2 ** view["exposure"]
    image = film(vignetted(image) * gain * white(view["warmth"]))
    iso = int(np.clip(18 / middle, 50, 2000)) // 10 * 10
    image = sensor(image, iso, sum(map(ord, shot.name)))
    jpeg(image, path, shot.orientation)
    if shot.exif:
        exif(shot, path, iso, dark=middle < 0.1)


def focused(image, depth, view):
    """Blur by distance from the plane of focus, the sharp parts kept out of the blurred ones behind them."""
    if not view["stop"]:
        return image
    width = max(image.shape)
    focal, plane = view["lens"] / 1000, view["focus"]
    circle = focal * focal / (view["stop"] * (plane - focal)) * (depth - plane) / depth / 0.036 * width
    radius = np.clip(np.abs(circle) / 2, 0, width / 45)
    behind = (circle > 0)[..., None]
    levels = [1, 2, 4, 8, 16, 32]
    out, fine = image.copy(), 0
    for level in levels:
        if radius.max() <= fine:
            break
        share = np.clip((radius - fine) / (level - fine), 0, 1)[..., None] * behind
        mask = np.clip(radius / level, 0.02, 1)[..., None] * behind + 1e-4
        soft = box_blur(image * mask, level, 2) / box_blur(mask, level, 2)
        out += share * (soft - out)
        fine = level
    for level in levels[::-1]:
        near = ((circle < 0) & (radius > level / 2) & (radius <= level if level < 32 else True))[..., None]
        if near.any():
            cover = box_blur(near.astype(np.float32), level, 2)
            out = out * (1 - cover) + box_blur(image * near, level, 2)
    return out


def glowing(image):
    """Light that spreads round the highlights in the glass."""
    w = image.shape[1]
    bright = np.clip(image - 1.5, 0, 8)
    return image + 0.05 * box_blur(bright, max(2, w // 60)) + 0.03 * box_blur(bright, max(1, w // 220))


def vignetted(image):
    h, w = image.shape[:2]
    y, x = np.mgrid[-1 : 1 : h * 1j, -1 : 1 : w * 1j].astype(np.float32)
    return image * (1 - 0.34 * ((x * x + y * y * 0.5625) / 1.5625) ** 1.2)[..., None]


def shaken(image, across, down):
    """The picture smeared along one line; both in thousandths of its width."""
    scale = image.shape[1] / 1000
    steps = int(max(abs(across), abs(down)) * scale)
    if not steps:
        return image
    offsets = [(round(down * scale * i / steps), round(across * scale * i / steps)) for i in range(steps + 1)]
    return sum(np.roll(image, offset, (0, 1)) for offset in offsets) / len(offsets)


def thumbed(image):
    """A finger over the lower right corner: dark, reddish, out of focus."""
    h, w = image.shape[:2]
    y, x = np.mgrid[0 : h / w : h * 1j, 0 : 1 : w * 1j].astype(np.float32)
    cover = np.clip((0.30 - np.hypot((x - 1.04) * 1.1, y + 0.08)) / 0.13, 0, 1)[..., None]
    cover = cover * cover * (3 - 2 * cover)
    return image * (1 - cover) + cover * image.mean() * np.float32((0.30, 0.10, 0.06))


def white(warmth):
    return np.float32((1 + 0.10 * warmth, 1, 1 - 0.14 * warmth))


def film(image):
    """Linear light to display values: a filmic curve, its highlights losing colour, and the sRGB transfer.

    The curve is Narkowicz's fit, "ACES Filmic Tone Mapping Curve", 2015 (from memory).
    """
    grey = image.mean(-1, keepdims=True)
    image = image + (grey - image) * np.clip((grey - 0.6) / 3, 0, 0.85)
    x = np.maximum(image, 0) * 0.85
    x = np.clip(x * (2.51 * x + 0.03) / (x * (2.43 * x + 0.59) + 0.14), 0, 1)
    return np.where(x < 0.0031308, 12.92 * x, 1.055 * x ** (1 / 2.4) - 0.055)


def sensor(image, iso, seed):
    """Grain in light and colour, coarser in the dark; display values in and out."""
    h, w = image.shape[:2]
    rng = np.random.default_rng(seed)

    def grain(channels, radius, gain):
        return box_blur(rng.normal(0, gain, (h, w, channels)).astype(np.float32), radius)

    noise = grain(1, 0, 0.6) + grain(1, 1, 2.0) + grain(3, 2, 1.8)
    amount = (0.005 + 0.010 * (iso / 1000) ** 0.5) * (1.1 - image.mean(-1, keepdims=True))
    return np.clip(image + noise * amount, 0, 1)


if __name__ == "__main__":
    main(*sys.argv[1:])
