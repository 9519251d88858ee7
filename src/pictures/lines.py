"""The skiff's lines: one surface, from which planks, moulds and the drawing are all taken.

Metres. x runs aft from the stem, y to the side, z up from the keel. A point of the surface is given
by t (0 at the stem, 1 at the transom) and u (0 at the keel, 1 at the sheer).
"""

import math

import numpy as np
from mathutils import Vector

LENGTH = 4.57
PLANKS = 8  # to a side
THICKNESS = 0.009  # a little more than 1/4 in, so that the laps throw a shadow
LAP = 0.028


class NaturalSpline:
    """A natural cubic through the given stations: what a batten does between its weights."""

    def __init__(self, x, y):
        x, y = np.array(x, float), np.array(y, float)
        n, h = len(x), np.diff(x)
        rows, right = np.eye(n), np.zeros(n)
        for i in range(1, n - 1):
            rows[i, i - 1 : i + 2] = h[i - 1], 2 * (h[i - 1] + h[i]), h[i]
            right[i] = 6 * ((y[i + 1] - y[i]) / h[i] - (y[i] - y[i - 1]) / h[i - 1])
        self.x, self.y, self.h, self.m = x, y, h, np.linalg.solve(rows, right)

    def __call__(self, t):
        i = min(max(int(np.searchsorted(self.x, t)) - 1, 0), len(self.h) - 1)
        h, a, b = self.h[i], self.x[i + 1] - t, t - self.x[i]
        left = self.m[i] * a**3 / (6 * h) + (self.y[i] / h - self.m[i] * h / 6) * a
        right = self.m[i + 1] * b**3 / (6 * h) + (self.y[i + 1] / h - self.m[i + 1] * h / 6) * b
        return float(left + right)


STATIONS = [0, 0.1, 0.25, 0.5, 0.75, 1]
half_breadth = NaturalSpline(STATIONS, [0.022, 0.265, 0.515, 0.705, 0.665, 0.47])
sheer_height = NaturalSpline(STATIONS, [0.80, 0.715, 0.625, 0.535, 0.545, 0.61])
keel_height = NaturalSpline(STATIONS, [0.10, 0.045, 0.015, 0.0, 0.035, 0.13])
deadrise = NaturalSpline(STATIONS, [0.9, 0.65, 0.38, 0.2, 0.22, 0.3])
straightness = NaturalSpline(STATIONS, [0.8, 0.55, 0.2, 0.0, 0.0, 0.05])


def stem(u):
    return 0.42 * (1 - u) ** 2.2


def hull(t, u):
    """The point at (t, u): a section is a blend of a quarter ellipse and a straight line."""
    angle = u * math.pi / 2
    d, e, b = deadrise(t), straightness(t), max(half_breadth(t), 0.022)
    y = 0.018 + (b - 0.018) * ((1 - e) * math.sin(min(angle, 1.7)) + e * u)
    keel = keel_height(t)
    z = keel + (sheer_height(t) - keel) * ((1 - d) * (1 - math.cos(angle)) + d * u)
    fore = stem(min(u, 1))
    return Vector((fore + t * (LENGTH + 0.05 * u - fore), y, z))


def normal(t, u):
    """The outward normal within the section."""
    d = hull(t, u + 0.02) - hull(t, max(u - 0.02, 0))
    return Vector((0, d.z, -d.y)).normalized()


def width_at_height(t, z):
    us = np.linspace(0, 1, 60)
    return hull(t, float(np.interp(z, [hull(t, u).z for u in us], us))).y


def width_across(x, z):
    """Half the width inside the planking at x aft of the stem and height z."""
    at = [(hull(t, 0.5 + 0.5 * z).x, width_at_height(t, z)) for t in np.linspace(0.05, 1, 60)]
    return float(np.interp(x, *zip(*at)))


def _plank_lines():
    us = np.linspace(0, 1, 201)
    steps = [(hull(0.5, b) - hull(0.5, a)).length for a, b in zip(us, us[1:])]
    girth = np.cumsum([0] + steps)
    return [float(np.interp(girth[-1] * k / PLANKS, girth, us)) for k in range(PLANKS + 1)], girth[-1]


PLANK_LINES, GIRTH = _plank_lines()  # u of each plank's lower edge: equal girths amidships


def plank_edges(k, t):
    """Lower and upper edge of plank k's inner face, with the normals there.

    The lower edge lies on the plank below by one thickness; towards the stem the gain lets it in flush.
    """
    gain = min(1, max(0, (t - 0.01) / 0.10))
    lower = PLANK_LINES[k]
    upper = min(PLANK_LINES[k + 1] + (LAP / GIRTH if k < PLANKS - 1 else 0), 1.0)
    n0, n1 = normal(t, lower), normal(t, upper)
    return hull(t, lower) + n0 * (THICKNESS * gain if k else 0), hull(t, upper), n0, n1
