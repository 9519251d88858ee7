"""What is drawn of her, from the hull's own functions: the lines plan, and the same full size on the loft."""

import subprocess
import tempfile
from pathlib import Path

import numpy as np

from lines import LENGTH, PLANK_LINES, hull

GREY, FAINT, RED, BLUE = "#333", "#777", "#8c3b34", "#3c5580"
STATIONS = np.linspace(0.05, 0.95, 10)
LOFT_LENGTH, LOFT_WIDTH = 4.88, 1.22  # two sheets end to end, metres


def lines_plan():
    """Draws the sheet once and returns its path."""
    marks = [*_profile_and_plan(), *_sections(), *_offsets(), *_title()]
    return _sheet("lines", 2100, 1350, "#efe9da", marks)


def loft():
    """Her lines full size on the painted boards; x along them, the base line near one edge."""
    scale = 800

    def at(x, y):
        return 60 + x * scale, (LOFT_WIDTH - 0.12 - y) * scale

    marks = list(_grid(at))
    for u in PLANK_LINES[1:]:
        marks.append(_line([at(p.x, p.y) for p in _along(u)], 0.9))
    for u in (PLANK_LINES[0], PLANK_LINES[-1]):
        marks.append(_line([at(p.x, p.z) for p in _along(u)], 0.9, BLUE))
    for t in STATIONS:  # the body plan stands on the middle of the profile
        side = 1 if t < 0.5 else -1
        section = [hull(t, u) for u in np.linspace(0, 1, 40)]
        marks.append(_line([at(2.30 + side * p.y, p.z + 0.02) for p in section], 0.9, RED))
    return _sheet("loft", int(LOFT_LENGTH * scale), int(LOFT_WIDTH * scale), "#cfccc2", marks)


def _grid(at):
    yield _line([at(0, 0), at(LENGTH + 0.1, 0)], 2)
    for z in (0.2, 0.4, 0.6, 0.8):
        yield _line([at(0, z), at(LENGTH + 0.1, z)], 0.8, FAINT)
    for i, t in enumerate(STATIONS):
        x = t * LENGTH
        yield _line([at(x, -0.08), at(x, 1.0)], 0.8, FAINT)
        yield _text(*at(x + 0.012, -0.075), 34, i + 1)
    yield _line([at(2.30, 0), at(2.30, 0.9)], 1.2, RED)


def _along(u):
    return [hull(t, u) for t in np.linspace(0, 1, 80)]


def _sheet(name, wide, high, paper, marks):
    path = Path(tempfile.mkdtemp()) / f"{name}.png"
    draw = [a for i in range(0, len(marks), 60) for a in ("-draw", "\n".join(marks[i : i + 60]))]
    size = ["-size", f"{wide}x{high}", f"xc:{paper}", "-font", "DejaVu-Sans"]
    subprocess.run(["convert", *size, *draw, str(path)], check=True)
    return str(path)


def _line(points, weight=2.0, colour=GREY):
    # Single segments: long polylines come out closed in ImageMagick 6.
    segments = " ".join(f"line {a:.1f},{b:.1f} {c:.1f},{d:.1f}" for (a, b), (c, d) in zip(points, points[1:]))
    return f"fill none stroke '{colour}' stroke-width {weight * 1.7} stroke-linecap round {segments}"


def _text(x, y, size, words):
    return f"fill '{GREY}' stroke none font-size {size} text {x:.0f},{y:.0f} '{words}'"


def _profile_and_plan():
    left, base, centre, scale, ts = 170, 420, 800, 380, np.linspace(0, 1, 60)
    for u in PLANK_LINES:
        heavy = 3 if u in (0, 1) else 1.5
        curve = [hull(t, u) for t in ts]
        yield _line([(left + p.x * scale, base - p.z * scale) for p in curve], heavy)
        if u:
            yield _line([(left + p.x * scale, centre - p.y * scale) for p in curve], heavy)
    for end in (0, 1):
        yield _line([(left + p.x * scale, base - p.z * scale) for p in (hull(end, u) for u in ts)], 3)
    for y in (base, centre):
        yield _line([(left - 40, y), (left + LENGTH * scale + 60, y)], 1)
    for i, t in enumerate(STATIONS):
        x = left + t * LENGTH * scale
        yield _line([(x, 90), (x, 860)], 1, FAINT)
        yield _text(x - 6, 885, 24, i + 1)


def _sections():
    for t in STATIONS:
        side = 1 if t < 0.5 else -1
        section = [hull(t, u) for u in np.linspace(0, 1, 30)]
        yield _line([(430 + side * p.y * 285, 1250 - p.z * 285) for p in section], 2)
    yield _line([(430, 880), (430, 1270)], 1)
    yield _line([(120, 1250), (740, 1250)], 1)


def _offsets():
    """Half-breadths at the stations, in feet, inches and eighths."""
    for i, u in enumerate(PLANK_LINES[1:]):
        y = 960 + i * 32
        yield _line([(860, y), (1480, y)], 1)
        for j, t in enumerate(STATIONS[:9]):
            eighths = round(hull(t, u).y / 0.0254 * 8)
            yield _text(870 + j * 68, y + 24, 19, f"{eighths // 96}-{eighths // 8 % 12}-{eighths % 8}")
    for j in range(10):
        yield _line([(860 + j * 68.8, 960), (860 + j * 68.8, 1216)], 1)


def _title():
    yield _line([(1540, 960), (2020, 960), (2020, 1290), (1540, 1290), (1540, 960)], 3)
    yield _line([(40, 40), (2060, 40), (2060, 1310), (40, 1310), (40, 40)], 3)
    words = ("15 FT LAPSTRAKE SKIFF", 34), ("LINES AND OFFSETS", 26), ("SCALE 1 - 10   SHEET 1 OF 4", 22)
    for i, (line, size) in enumerate(words):
        yield _text(1565, 1020 + i * 60, size, line)
