"""The skiff as it grows: moulds, planks, spine, rails, thwarts, in either attitude."""

import numpy as np
from mathutils import Vector

from lines import (
    LENGTH,
    PLANK_LINES,
    PLANKS,
    THICKNESS,
    hull,
    normal,
    plank_edges,
    stem,
    width_across,
    width_at_height,
)
from materials import M
from solids import beam, box, cylinder, mesh, slab, sweep

MOULDS = [0.13, 0.29, 0.46, 0.63, 0.80]
THWART_HEIGHT = 0.36


class Boat:
    """Places hull points in the room: keel up with the base line at `height`, or upright standing on it."""

    def __init__(self, keel_up, height=None):
        self.keel_up = keel_up
        self.height = height if height is not None else (1.36 if keel_up else 0.62)

    def at(self, p):
        return Vector((p.x, p.y, self.height - p.z if self.keel_up else self.height + p.z))

    def towards(self, n):
        return Vector((n.x, n.y, -n.z if self.keel_up else n.z))

    def outside(self, t, u, side):
        p = hull(t, u)
        return self.at(Vector((p.x, p.y * side, p.z)))

    # Planking ----------------------------------------------------------------------------------

    def plank(self, k, side, material):
        """Plank k, 0 the garboard; side 1 is port in a boat that lies keel up, starboard in one upright."""
        n, verts, run, last, at, widths = 72, [], 0, None, [], []
        for i in range(n + 1):
            t = (i / n) ** 1.15
            p0, p1, n0, n1 = plank_edges(k, t)
            thick = THICKNESS * (1 if t > 0.02 else 0.8)
            middle = (p0 + p1) / 2
            run += (middle - last).length if last is not None else 0
            last = middle
            at.append(run)
            widths.append((p1 - p0).length / 2)
            verts += [
                self.at(Vector((q.x, q.y * side, q.z))) for q in (p0, p1, p1 + n1 * thick, p0 + n0 * thick)
            ]
        faces, uvs, across, kinds = [], [], [], []
        upper = (0, 1, 1, 0)
        for i in range(n):
            for a in range(4):
                b = (a + 1) % 4
                faces.append((4 * i + a, 4 * i + b, 4 * i + 4 + b, 4 * i + 4 + a))

                def grain(j, corner):
                    y = widths[j] if upper[corner] else -widths[j]
                    return at[j], y + (0.5 if corner > 1 else 0) + (
                        THICKNESS if a in (1, 3) and corner > 1 else 0
                    )

                uvs.append([grain(i, a), grain(i, b), grain(i + 1, b), grain(i + 1, a)])
                across.append([(0, upper[a]), (0, upper[b]), (0, upper[b]), (0, upper[a])])
                kinds.append(a % 2)
        faces += [(0, 1, 2, 3), (4 * n, 4 * n + 1, 4 * n + 2, 4 * n + 3)]
        uvs += [[(0, 0), (0, 0.1), (0.006, 0.1), (0.006, 0)]] * 2
        across += [[(0, 0.5)] * 4] * 2
        edge = M["edge"] if material in (M["ply"], M["varnished"], M["coated"]) else material
        mesh(verts, faces, [material, edge], uvs, across, kinds + [0, 0], bevel=0.0012, smooth=True)

    def planks(self, port, starboard=None, finish="ply", sheer=None):
        for side, count in ((1, port), (-1, port if starboard is None else starboard)):
            for k in range(count):
                self.plank(k, side, M[sheer if sheer and k == PLANKS - 1 else finish])

    # The setup ---------------------------------------------------------------------------------

    def strongback(self):
        z = 0.40
        for y in (-0.33, 0.33):
            box((2.35, y, z), (4.6, 0.045, 0.14), M["pine"])
        for x in np.linspace(0.12, 4.55, 7):
            box((x, 0, z), (0.045, 0.615, 0.12), M["pine"])
        for x in (0.35, 2.3, 4.3):
            for y in (-0.39, 0.39):
                box((x, y, 0.20), (0.09, 0.045, 0.40), M["pine"])
            box((x, 0, 0.12), (0.09, 0.75, 0.045), M["pine"], (90, 0, 0))

    def moulds(self, stations=MOULDS):
        base = self.height - 0.47
        for t in stations:
            x = hull(t, PLANK_LINES[4]).x
            self._across(mould_half(t, base), x - 0.009, 0.018, M["mould"])
            box(self.at(Vector((x + 0.03, 0, base - 0.035))), (0.04, 0.75, 0.07), M["pine"])

    def _across(self, half, x, thick, material):
        points = [self.at(Vector((x, y, z))) for y, z in mirrored(half)]
        return slab(points, Vector((thick, 0, 0)), material)

    def transom(self, material):
        self._across(transom_half(), hull(1.0, 0).x - 0.004, 0.028, material)

    def battens(self, lines):
        for side in (1, -1):
            for u in lines:
                path, normals = [], []
                for t in np.linspace(0.0, 1.015, 48):
                    n = normal(t, u)
                    p = hull(t, u) + n * 0.012
                    path.append(self.at(Vector((p.x, p.y * side, p.z))))
                    n = self.towards(n)
                    normals.append(Vector((0, n.y * side, n.z)))
                sweep(path, 0.028, 0.016, M["fir"], normals)

    # Spine, rails, inside ----------------------------------------------------------------------

    def spine(self, material, outer=False):
        fore = [hull(0, u) for u in np.linspace(1, 0, 22)]
        fore = [Vector((p.x, 0, p.z)) for p in fore]
        fore[0].z += 0.03 if outer else 0.05
        keel = [Vector((hull(t, 0).x, 0, hull(t, 0).z)) for t in np.linspace(0.03, 1, 34)]
        drop = -0.016 if outer else 0.0
        wide, deep = (0.026, 0.035) if outer else (0.042, 0.055)
        sweep([self.at(p + Vector((drop * 1.2, 0, drop))) for p in fore + keel[:3]], wide, deep, material)
        wide, deep = (0.03, 0.035) if outer else (0.06, 0.02)
        sweep([self.at(p + Vector((0, 0, drop))) for p in keel], wide, deep, material)
        if outer:
            run = [hull(t, 0) for t in (0.72, 0.86, 1.0)]
            outline = [(p.x, p.z) for p in run] + [(run[-1].x - 0.01, run[0].z - 0.03)]
            slab(
                [self.at(Vector((x, -0.012, z))) for x, z in outline], Vector((0, 0.024, 0)), material, 0.002
            )

    def rails(self, material):
        for side in (1, -1):
            for off, wide in ((0.014 + THICKNESS, 0.024), (-0.010, 0.016)):
                path = [hull(t, 1.0) + Vector((0, off, -0.008)) for t in np.linspace(0.004, 1.0, 60)]
                path = [self.at(Vector((p.x, p.y * side, p.z))) for p in path]
                sweep(path, 0.026, wide, material, [Vector((0, side, 0))] * len(path))
        tip, back = hull(0.0, 1.0), hull(0.055, 1.0)
        y, z = back.y - 0.02, tip.z - 0.024
        hook = [
            (tip.x + 0.03, 0.012),
            (back.x, y),
            (back.x - 0.06, 0.001),
            (back.x, -y),
            (tip.x + 0.03, -0.012),
        ]
        slab([self.at(Vector((x, y, z))) for x, y in hook], Vector((0, 0, 0.024)), material, 0.003)

    def floorboards(self):
        for k in range(-3, 4):
            length = (2.3, 2.3, 1.9, 1.3)[abs(k)]
            box(self.at(Vector((2.45, k * 0.095, 0.085))), (length, 0.08, 0.012), M["fir"], bevel=0.003)
        for t in (0.38, 0.5, 0.62, 0.72):
            box(self.at(Vector((hull(t, 0.3).x, 0, 0.065))), (0.03, 0.62, 0.03), M["fir"])

    def thwarts(self, wood="varnished_fir", knees=True):
        z = THWART_HEIGHT
        for t, wide in ((0.30, 0.24), (0.56, 0.26), (0.80, 0.24)):
            x = hull(t, 0.6).x
            ends = [(x + dx, width_across(x + dx, z - 0.012) - 0.010) for dx in (-wide / 2, wide / 2)]
            outline = ends + [(a, -b) for a, b in reversed(ends)]
            slab(
                [self.at(Vector((a, b, z - 0.011))) for a, b in outline],
                Vector((0, 0, 0.022)),
                M[wood],
                0.004,
            )
            cylinder(self.at(Vector((x, 0, z / 2 + 0.03))), 0.016, z - 0.05, M[wood])
            for side in (-1, 1) if knees else ():
                foot, head = width_at_height(t, z + 0.015) - 0.014, width_at_height(t, 0.5) - 0.016
                curve = [
                    (foot - 0.13, z + 0.012),
                    (foot - 0.10, z + 0.035),
                    (head - 0.045, 0.46),
                    (head - 0.03, 0.5),
                ]
                outline = [(foot, z + 0.012)] + curve + [(head, 0.5)]
                points = [self.at(Vector((x - 0.011, side * a, b))) for a, b in outline]
                slab(points, Vector((0.022, 0, 0)), M["varnished"], 0.004)
        for side in (1, -1):
            ts = np.linspace(0.18, 0.9, 30)
            path = [
                Vector((hull(t, 0.6).x, side * (width_at_height(t, z - 0.03) - 0.012), z - 0.03)) for t in ts
            ]
            sweep([self.at(p) for p in path], 0.04, 0.016, M[wood], [Vector((0, side, 0))] * len(path))

    def floor_timbers(self):
        """Timbers across the bilge, cut to the planks, before there are boards on them."""
        for t in (0.28, 0.42, 0.56, 0.70):
            p = hull(t, 0.42)
            bottom = [(hull(t, u).y, hull(t, u).z + 0.012) for u in np.linspace(0.02, 0.42, 9)]
            half = bottom + [(p.y - 0.005, p.z + 0.03), (0.16, 0.10)]
            self._across([(0, bottom[0][1])] + half, p.x, 0.022, M["fir"])

    def sawhorses(self):
        """Two horses under the boat, or under its sheer when it lies keel up."""
        for x in (1.05, 3.5):
            top = self.height - (sheer_at(x) if self.keel_up else 0) - 0.05
            box((x, 0, top), (0.09, 1.45, 0.09), M["pine"])
            for y in (-0.55, 0.55):
                for dx in (-1, 1):
                    foot = (x + dx * 0.24, y * 1.15, 0)
                    beam((x + dx * 0.02, y, top - 0.04), foot, 0.038, 0.085, M["pine"], up=(0, 1, 0))


def mould_half(t, base):
    """Half the outline of the mould at station t, (y, z), its legs reaching up to `base`.

    A mould is a plane across the boat, not a line of equal t. Its edge keeps clear of the planks by 2 mm.
    """
    x = hull(t, PLANK_LINES[4]).x
    cut = [hull((x - stem(u)) / (LENGTH + 0.05 * u - stem(u)), u) for u in PLANK_LINES]
    half = [(p.y - 0.002, p.z + 0.002) for p in cut]
    w = min(half[-1][0], 0.30)
    return half + [(w, base), (w - 0.09, base), (w - 0.12, half[-1][1] + 0.02)]


def transom_half():
    """Half the outline of the transom, (y, z), from the keel up to the crown."""
    half = [(p.y, p.z) for p in (hull(1.0, u) for u in np.linspace(0, 1, 24))]
    edge, top = half[-1]
    return half + [(y, top + 0.06 * (1 - (y / edge) ** 2)) for y in np.linspace(edge * 0.9, 0.01, 6)]


def mirrored(half):
    """A whole outline from its half."""
    return half + [(-y, z) for y, z in reversed(half)]


def sheer_at(x):
    return min(hull(t, 1.0).z for t in np.linspace(0, 1, 60) if abs(hull(t, 1.0).x - x) < 0.12)
