"""Takes the renderer's noise out of the light and leaves the grain of the wood."""

import numpy as np


def denoised(image, colour, normal, depth, levels=5):
    """An edge-avoiding wavelet on the light without the surface colour, as strong as the noise is.

    After Dammertz et al., "Edge-Avoiding A-Trous Wavelet Transform for fast Global Illumination
    Filtering", 2010, and Schied et al., "Spatiotemporal Variance-Guided Filtering", 2017 (both from
    memory; the weights are our own).
    """
    surface = np.maximum(colour, 0) + 0.08
    light = _without_sparks(image / surface)
    unit = normal / (np.sqrt((normal * normal).sum(-1, keepdims=True)) + 1e-5)
    guide = box_blur(colour, 1, 1)
    noise = _noise(light.mean(-1))
    for level in range(levels):
        step = 2**level
        centre = _Reach(step, light.shape)
        grey = box_blur(light.mean(-1, keepdims=True), 1, 1)[..., 0]
        sigma = np.sqrt(box_blur(noise[..., None], 1, 1)[..., 0]) * 2.5 + grey * 0.015 + 1e-4
        padded = [centre.pad(a) for a in (light, unit, depth, guide, grey, noise)]
        total, weight, spread = light.copy(), np.ones_like(depth), noise.copy()
        for dy, dx in ((a, b) for a in (-1, 0, 1) for b in (-1, 0, 1) if a or b):
            far_light, far_unit, far_depth, far_guide, far_grey, far_noise = (
                centre.shift(a, dy, dx) for a in padded
            )
            facing = np.clip((unit * far_unit).sum(-1), 0, 1)
            w = facing**8 if level == 0 else facing**32
            apart = np.abs(depth - far_depth) / (depth * 0.012 * step + 1e-3)
            apart += np.abs(grey - far_grey) / sigma
            apart += np.abs(guide - far_guide).sum(-1) * 0.8
            w = w * np.exp(-apart) * (0.4 if dy and dx else 0.65)
            total += far_light * w[..., None]
            spread += far_noise * w * w
            weight += w
        light, noise = total / weight[..., None], spread / (weight * weight)
    return light * surface


def box_blur(a, radius, times=3):
    """A box blur repeated; three times are nearly a Gaussian. `a` is height x width x channels."""
    if radius < 1:
        return a
    span = 2 * radius + 1
    for _ in range(times):
        for axis in (0, 1):
            edges = [(radius + 1, radius) if i == axis else (0, 0) for i in range(3)]
            run = np.cumsum(np.pad(a, edges, mode="edge"), axis, dtype=np.float64)
            n = a.shape[axis]
            upper = run[span : span + n] if axis == 0 else run[:, span : span + n]
            lower = run[:n] if axis == 0 else run[:, :n]
            a = ((upper - lower) / span).astype(np.float32)
    return a


class _Reach:
    """Views of an array shifted by up to `step` pixels, the edge repeated."""

    def __init__(self, step, shape):
        self.step, (self.h, self.w) = step, shape[:2]

    def pad(self, a):
        return np.pad(a, [(self.step, self.step)] * 2 + [(0, 0)] * (a.ndim - 2), mode="edge")

    def shift(self, padded, dy, dx):
        y, x = self.step * (1 + dy), self.step * (1 + dx)
        return padded[y : y + self.h, x : x + self.w]


def _around(a):
    reach = _Reach(1, a.shape)
    padded = reach.pad(a)
    return np.stack([reach.shift(padded, dy, dx) for dy in (-1, 0, 1) for dx in (-1, 0, 1)])


def _without_sparks(light):
    """Single pixels far brighter than all about them are taken down."""
    grey = light.mean(-1)
    ceiling = np.sort(_around(grey), 0)[6] * 1.6 + 0.02
    return light * np.minimum(1, ceiling / (grey + 1e-6))[..., None]


def _noise(grey):
    """Variance about the median of the neighbours, taken over a patch: edges count for little."""
    residue = grey - np.median(_around(grey), 0)
    return box_blur((residue * residue)[..., None], 3, 1)[..., 0] * 1.3
