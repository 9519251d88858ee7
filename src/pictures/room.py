"""The one-car garage itself: walls, joists, window, door, and what the door shows."""

import math
import random

import numpy as np

from materials import M, glow
from solids import box, mesh, panel

DOOR, END, LEFT, RIGHT, CEILING = -1.5, 5.75, -1.85, 1.85, 2.5
WINDOW = (2.3, 3.5, 1.15, 1.95)  # x from, to; z from, to; in the right-hand wall
HEAD = 2.25  # of the door


def room(light):
    _floor_and_walls()
    _window(light)
    _front()
    if light.door is None:
        _shut_door()
    elif light.door:
        _yard(light.door / 2, light.sky)


def _floor_and_walls():
    blocks, length = M["blocks"], END - DOOR
    x0, x1, z0, z1 = WINDOW
    panel((DOOR - 2, LEFT, 0), (END, LEFT, 0), (END, RIGHT, 0), (DOOR - 2, RIGHT, 0), M["concrete"])
    left = (DOOR, LEFT, 0), (END, LEFT, 0), (END, LEFT, CEILING), (DOOR, LEFT, CEILING)
    panel(*left, blocks, length, CEILING)
    panel((END, LEFT, 0), (END, RIGHT, 0), (END, RIGHT, CEILING), (END, LEFT, CEILING), blocks, 3.7, CEILING)
    for a, b, c, d in ((DOOR, x0, 0, CEILING), (x1, END, 0, CEILING), (x0, x1, 0, z0), (x0, x1, z1, CEILING)):
        corners = [(a, c), (b, c), (b, d), (a, d)]
        mesh([(x, RIGHT, z) for x, z in corners], [(0, 1, 2, 3)], blocks, [corners])
    above = (DOOR, LEFT, CEILING), (END, LEFT, CEILING), (END, RIGHT, CEILING), (DOOR, RIGHT, CEILING)
    panel(*above, M["ceiling"])
    for x in np.arange(DOOR + 0.4, END, 0.6):
        box((x, 0, CEILING - 0.07), (0.045, 3.7, 0.14), M["pine"])


def _window(light):
    x0, x1, z0, z1 = WINDOW
    middle = (x0 + x1) / 2
    for z in (z0, z1):
        box((middle, RIGHT + 0.03, z), (1.28, 0.14, 0.05), M["white"])
    for x in (x0, x1, middle):
        box((x, RIGHT + 0.03, (z0 + z1) / 2), (0.05, 0.09, 0.85), M["white"])
    box((middle, RIGHT - 0.04, z0 - 0.03), (1.4, 0.16, 0.03), M["pine"])
    if light.window:
        y, shade = RIGHT + 0.6, tuple(0.5 + 0.5 * c for c in light.sky)
        low, high = z0 - 0.8, z1 + 0.8
        _sunlit(
            (x0 - 1, y, low),
            (x1 + 1, y, low),
            (x1 + 1, y, high),
            (x0 - 1, y, high),
            glow("sky", shade, 9 * light.window),
        )


def _front():
    """The front wall about the door, seen from the yard."""
    x = DOOR - 0.01
    for y0, y1, z0, z1 in (
        (LEFT - 3, LEFT + 0.12, 0, 4),
        (RIGHT - 0.12, RIGHT + 3, 0, 4),
        (LEFT + 0.12, RIGHT - 0.12, HEAD, 4),
    ):
        panel((x, y0, z0), (x, y1, z0), (x, y1, z1), (x, y0, z1), M["blocks"], y1 - y0, z1 - z0)
    for y in (LEFT + 0.15, RIGHT - 0.15):
        box((DOOR, y, HEAD / 2), (0.12, 0.06, HEAD), M["white"])
    box((DOOR, 0, HEAD), (0.12, 3.5, 0.08), M["white"])


def _sunlit(a, b, c, d, material):
    panel(a, b, c, d, material).visible_shadow = False  # stands between the sun and the room


def _yard(bright, sky):
    """Drive, hedge, fence and sky, all brighter than the room."""
    x, wide = DOOR - 7, 9
    grey = tuple(0.78 * c for c in sky)
    _sunlit(
        (x, -wide, 0),
        (DOOR - 0.7, -wide, 0),
        (DOOR - 0.7, wide, 0),
        (x, wide, 0),
        glow("drive", grey, 0.8 * bright, 0.7),
    )
    leaf = glow("hedge", tuple(c * s for c, s in zip((0.11, 0.145, 0.06), sky)), 1.0 * bright, 9.0)
    tops = [
        (y, 1.5 + 0.16 * math.sin(y * 1.3) + random.uniform(-0.07, 0.07))
        for y in np.linspace(-wide, wide, 120)
    ]
    verts = [(x, y, z) for y, top in tops for z in (0, top)]
    faces = [(2 * i, 2 * i + 2, 2 * i + 3, 2 * i + 1) for i in range(len(tops) - 1)]
    mesh(verts, faces, leaf).visible_shadow = False
    board = glow("fence", tuple(0.30 * c for c in sky), 0.9 * bright, 1.3)
    for y in np.arange(-wide, -0.9, 0.16):
        high = 1.75 + random.uniform(-0.02, 0.02)
        _sunlit((x + 1, y, 0), (x + 1, y + 0.145, 0), (x + 1, y + 0.145, high), (x + 1, y, high), board)
    far = (x - 1, -14, 0), (x - 1, 14, 0), (x - 1, 14, 9), (x - 1, -14, 9)
    _sunlit(*far, glow("sky behind", sky, 3.2 * bright))


def _shut_door():
    for i in range(5):
        z = 0.22 + 0.44 * i
        box((DOOR, 0, z), (0.04, 3.72, 0.432), M["white"], bevel=0.008)
        for y in (-1.35, -0.45, 0.45, 1.35):
            box((DOOR + 0.022, y, z), (0.01, 0.62, 0.26), M["white"], bevel=0.006)
    box((DOOR, 0, 2.38), (0.1, 3.7, 0.24), M["pine"])
