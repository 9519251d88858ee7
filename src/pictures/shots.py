"""The list of pictures: scene, file in the journal, the minute it was taken, and how the phone was held."""

from collections.abc import Callable
from dataclasses import dataclass

import closeups
import scenes


@dataclass(frozen=True)
class Shot:
    """One picture.

    path: from the journal's root. taken: local time, as EXIF writes it. zone: offset from UTC.
    orientation: the EXIF value; the pixels are turned so that the picture still shows upright.
    upright: taller than wide. position: latitude and longitude in degrees, invented. exif: False writes none.
    """

    scene: Callable[[], scenes.View]
    path: str
    taken: str
    orientation: int = 1
    upright: bool = False
    position: tuple = None
    exif: bool = True
    seed: int = 7

    @property
    def zone(self):
        """Offset of America/Chicago on that day of 2026: summer time from 8 March to 31 October."""
        return "-05:00" if "2026:03:08" < self.taken[:10] < "2026:11:01" else "-06:00"


OPEN_SEA = (12.345678, -45.678901)  # nobody's garage
ADRIFT = (-23.456789, -12.345678)

SHOTS = [
    Shot(scenes.moulds, "2026/2026-02-07-lining-off/moulds.jpg", "2026:02:07 15:12:40"),
    Shot(
        scenes.battens_from_aft,
        "2026/2026-02-15-stem-bevel/battens.jpg",
        "2026:02:15 19:48:03",
        orientation=6,
        upright=True,
    ),
    Shot(
        closeups.plan_on_bench, "2026/2026-02-21-spiling/plan.jpg", "2026:02:21 16:31:22", position=OPEN_SEA
    ),
    Shot(closeups.scarf, "2026/2026-03-05-first-scarfs/scarf.jpg", "2026:03:05 20:58:10"),
    Shot(
        scenes.garboards, "2026/2026-03-14-garboards/garboards.jpg", "2026:03:14 21:22:51", position=OPEN_SEA
    ),
    Shot(
        scenes.garboard_at_stem,
        "2026/2026-03-14-garboards/at-the-stem.jpg",
        "2026:03:14 21:25:17",
        orientation=3,
    ),
    Shot(closeups.resin_pots, "2026/2026-03-28-second-strakes/pots.jpg", "2026:03:28 17:02:36"),
    Shot(
        scenes.third_pair_clamped,
        "2026/2026-04-11-third-pair/third-pair.jpg",
        "2026:04:11 18:14:09",
        position=ADRIFT,
    ),
    Shot(scenes.clamps_along_lap, "2026/planking/2026-04-18-fourth-port/clamps.jpg", "2026:04:18 18:40:55"),
    Shot(
        scenes.port_four,
        "2026/planking/2026-04-19-fourth-starboard/four-port.jpg",
        "2026:04:19 17:35:20",
        orientation=3,
    ),
    Shot(scenes.port_ahead, "2026/2026-05-02-fifth-port/port-ahead.jpg", "2026:05:02 19:21:44"),
    Shot(
        closeups.plane_and_shavings,
        "2026/2026-05-09-fifth-starboard/shavings.jpg",
        "2026:05:09 18:05:31",
        orientation=8,
        upright=True,
    ),
    Shot(
        scenes.sixth_pair_at_night, "2026/2026-05-16-hot-cup/sixth-pair.jpg", "2026:05:16 21:37:12", seed=11
    ),
    Shot(closeups.burnt_cup, "2026/2026-05-16-hot-cup/cup.jpg", "2026:05:16 20:11:48", seed=11),
    Shot(scenes.laps_at_quarter, "2026/2026-05-30-seventh-pair/laps.jpg", "2026:05:30 18:26:05", seed=11),
    Shot(scenes.all_planks, "2026/2026-06-13-sheer-strakes/last-strake.jpg", "2026:06:13 20:04:30", seed=11),
    Shot(scenes.fair_laps, "2026/2026-06-14-looking/fair.jpg", "2026:06:14 19:10:02", exif=False, seed=11),
    Shot(scenes.coated, "2026/2026-06-20-second-coat/coated.jpg", "2026:06:20 19:03:27", seed=11),
    Shot(scenes.turned, "2026/2026-06-27/turned.jpg", "2026:06:27 16:20:14", position=OPEN_SEA, seed=11),
    Shot(
        scenes.bilge,
        "2026/2026-08-15-floors/floors.jpg",
        "2026:08:15 17:48:39",
        orientation=6,
        upright=True,
        seed=5,
    ),
    Shot(scenes.thwarts, "2026/2026-08-22-thwarts/thwarts.jpg", "2026:08:22 18:33:00", seed=5),
    Shot(scenes.knee, "2026/2026-09-03-knee-again/knee.jpg", "2026:09:03 18:12:26", upright=True, seed=5),
    Shot(scenes.rails_on, "2026/2026-09-05-rails/rails.jpg", "2026:09:05 17:55:41", seed=5),
    Shot(closeups.mast_on_horses, "2026/spars/2026-09-19-mast-blank/mast.jpg", "2026:09:19 18:17:33", seed=5),
    Shot(
        closeups.oars_on_bench,
        "2026/spars/2026-09-27-oars/oars.jpg",
        "2026:09:27 17:01:50",
        position=ADRIFT,
        seed=5,
    ),
    Shot(scenes.primed, "2026/2026-10-04-primer/primed.jpg", "2026:10:04 16:42:08", seed=5),
    Shot(scenes.wet_paint, "2026/2026-10-10-paint/wet.jpg", "2026:10:10 19:29:15", orientation=3, seed=5),
    Shot(closeups.varnish_tins, "2026/2026-10-17-varnish/tins.jpg", "2026:10:17 17:20:46", seed=5),
    Shot(closeups.sailcloth, "2026/2026-10-25-sail-kit/sailcloth.jpg", "2026:10:25 16:08:57", seed=5),
    Shot(
        scenes.painted_inside_out,
        "2026/2026-11-07-where-she-stands/painted.jpg",
        "2026:11:07 14:51:19",
        seed=5,
    ),
    Shot(scenes.thwart_varnish, "2026/2026-11-07-where-she-stands/inside.jpg", "2026:11:07 14:53:02", seed=5),
]
