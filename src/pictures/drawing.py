"""The lines plan that hangs on the wall and lies on the bench, drawn from the hull's own functions."""

import os
import subprocess
import tempfile

import numpy as np

from lines import LENGTH, PLANK_LINES, hull

WIDTH, HEIGHT, SCALE = 2100, 1350, 380
SHEET = os.path.join(tempfile.gettempdir(), "skiff-lines-plan.png")
GREY, FAINT = "#333", "#777"


def lines_plan():
    """Draws the sheet once and returns its path."""
    if not os.path.exists(SHEET):
        marks = list(_profile_and_plan()) + list(_sections()) + list(_offsets()) + list(_title())
        draw = [a for i in range(0, len(marks), 60) for a in ("-draw", "\n".join(marks[i : i + 60]))]
        size = ["-size", f"{WIDTH}x{HEIGHT}", "xc:#efe9da", "-font", "DejaVu-Sans"]
        subprocess.run(["convert", *size, *draw, SHEET], check=True)
    return SHEET


def _line(points, weight=2.0, colour=GREY):
    # Single segments: long polylines come out closed in ImageMagick 6.
    segments = " ".join(f"line {a:.1f},{b:.1f} {c:.1f},{d:.1f}" for (a, b), (c, d) in zip(points, points[1:]))
    return f"fill none stroke '{colour}' stroke-width {weight * 1.7} stroke-linecap round {segments}"


def _text(x, y, size, words):
    return f"fill '{GREY}' stroke none font-size {size} text {x:.0f},{y:.0f} '{words}'"


def _profile_and_plan():
    left, base, centre, ts = 170, 420, 800, np.linspace(0, 1, 60)
    for u in PLANK_LINES:
        heavy = 3 if u in (0, 1) else 1.5
        curve = [hull(t, u) for t in ts]
        yield _line([(left + p.x * SCALE, base - p.z * SCALE) for p in curve], heavy)
        if u:
            yield _line([(left + p.x * SCALE, centre - p.y * SCALE) for p in curve], heavy)
    for end in (0, 1):
        yield _line([(left + p.x * SCALE, base - p.z * SCALE) for p in (hull(end, u) for u in ts)], 3)
    for y in (base, centre):
        yield _line([(left - 40, y), (left + LENGTH * SCALE + 60, y)], 1)
    for i, t in enumerate(np.linspace(0.05, 0.95, 10)):
        x = left + t * LENGTH * SCALE
        yield _line([(x, 90), (x, 860)], 1, FAINT)
        yield _text(x - 6, 885, 24, i + 1)


def _sections():
    for t in np.linspace(0.05, 0.95, 10):
        side = 1 if t < 0.5 else -1
        section = [hull(t, u) for u in np.linspace(0, 1, 30)]
        yield _line([(430 + side * p.y * SCALE * 0.75, 1250 - p.z * SCALE * 0.75) for p in section], 2)
    yield _line([(430, 880), (430, 1270)], 1)
    yield _line([(120, 1250), (740, 1250)], 1)


def _offsets():
    """Half-breadths in feet, inches and eighths."""
    for i, u in enumerate(PLANK_LINES[1:]):
        y = 960 + i * 32
        yield _line([(860, y), (1480, y)], 1)
        for j, t in enumerate(np.linspace(0.05, 0.95, 9)):
            eighths = round(hull(t, u).y / 0.0254 * 8)
            yield _text(870 + j * 68, y + 24, 19, f"{eighths // 96}-{eighths // 8 % 12}-{eighths % 8}")
    for j in range(10):
        yield _line([(860 + j * 68.8, 960), (860 + j * 68.8, 1216)], 1)


def _title():
    yield _line([(1540, 960), (2020, 960), (2020, 1290), (1540, 1290), (1540, 960)], 3)
    yield _line([(40, 40), (WIDTH - 40, 40), (WIDTH - 40, HEIGHT - 40), (40, HEIGHT - 40), (40, 40)], 3)
    for i, (words, size) in enumerate(
        (("15 FT LAPSTRAKE SKIFF", 34), ("LINES AND OFFSETS", 26), ("SCALE 1 - 10   SHEET 1 OF 4", 22))
    ):
        yield _text(1565, 1020 + i * 60, size, words)
