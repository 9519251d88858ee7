"""What things rest on."""

from materials import M
from solids import beam, box


def horses(xs, y, top, wide=0.5):
    """Trestles across, their upper faces at `top`, one at each x."""
    for x in xs:
        box((x, y, top + 0.005), (0.09, wide, 0.09), M["pine"])
        for dy in (-0.4 * wide, 0.4 * wide):
            for dx in (-1, 1):
                foot = (x + dx * 0.2, y + dy * 1.2, 0)
                beam((x + dx * 0.02, y + dy, top - 0.03), foot, 0.038, 0.08, M["pine"], up=(0, 1, 0))
