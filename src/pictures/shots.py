"""The list of pictures: scene, file in the journal, the minute it was taken, and how the phone was turned."""

from dataclasses import dataclass
from datetime import datetime
from importlib import import_module
from zoneinfo import ZoneInfo

HOME = ZoneInfo("America/Chicago")


@dataclass(frozen=True)
class Shot:
    """One picture.

    where: module and function under `scenes`. path: from the journal's root. taken: local time, as EXIF
    writes it. orientation: the EXIF value; the pixels are turned so that the picture still shows upright.
    upright: taller than wide. position: latitude and longitude in degrees, invented. exif: False writes
    none. seed: of the clutter.
    """

    where: str
    path: str
    taken: str
    orientation: int = 1
    upright: bool = False
    position: tuple = None
    exif: bool = True
    seed: int = 7

    @property
    def name(self):
        return self.where.split(".")[1]

    def scene(self):
        """Lays the scene in Blender and returns its View."""
        module, name = self.where.split(".")
        return getattr(import_module(f"scenes.{module}"), name)()

    @property
    def zone(self):
        """Offset from UTC, as EXIF writes it."""
        moment = datetime.strptime(self.taken, "%Y:%m:%d %H:%M:%S").replace(tzinfo=HOME)
        offset = moment.strftime("%z")
        return f"{offset[:3]}:{offset[3:]}"


OPEN_SEA = (12.345678, -45.678901)  # nobody's garage
ADRIFT = (-23.456789, -12.345678)

SHOTS = [
    Shot("planking.moulds", "2026/2026-02-07-lining-off/moulds.jpg", "2026:02:07 15:12:40"),
    Shot(
        "planking.battens_from_aft",
        "2026/2026-02-15-stem-bevel/battens.jpg",
        "2026:02:15 19:48:03",
        orientation=6,
        upright=True,
    ),
    Shot("bench.plan_on_bench", "2026/2026-02-21-spiling/plan.jpg", "2026:02:21 16:31:22", position=OPEN_SEA),
    Shot("bench.scarf", "2026/2026-03-05-first-scarfs/scarf.jpg", "2026:03:05 20:58:10"),
    Shot(
        "planking.garboards",
        "2026/2026-03-14-garboards/garboards.jpg",
        "2026:03:14 21:22:51",
        position=OPEN_SEA,
    ),
    Shot(
        "planking.garboard_at_stem",
        "2026/2026-03-14-garboards/at-the-stem.jpg",
        "2026:03:14 21:25:17",
        orientation=3,
    ),
    Shot("bench.resin_pots", "2026/2026-03-28-second-strakes/pots.jpg", "2026:03:28 17:02:36"),
    Shot(
        "planking.third_pair_clamped",
        "2026/2026-04-11-third-pair/third-pair.jpg",
        "2026:04:11 18:14:09",
        position=ADRIFT,
    ),
    Shot(
        "planking.clamps_along_lap", "2026/planking/2026-04-18-fourth-port/clamps.jpg", "2026:04:18 18:40:55"
    ),
    Shot(
        "planking.port_four",
        "2026/planking/2026-04-19-fourth-starboard/four-port.jpg",
        "2026:04:19 17:35:20",
        orientation=3,
    ),
    Shot("planking.port_ahead", "2026/2026-05-02-fifth-port/port-ahead.jpg", "2026:05:02 19:21:44"),
    Shot(
        "bench.plane_and_shavings",
        "2026/2026-05-09-fifth-starboard/shavings.jpg",
        "2026:05:09 18:05:31",
        orientation=8,
        upright=True,
    ),
    Shot(
        "planking.sixth_pair_at_night",
        "2026/2026-05-16-hot-cup/sixth-pair.jpg",
        "2026:05:16 21:37:12",
        seed=11,
    ),
    Shot("bench.burnt_cup", "2026/2026-05-16-hot-cup/cup.jpg", "2026:05:16 20:11:48", seed=11),
    Shot("planking.laps_at_quarter", "2026/2026-05-30-seventh-pair/laps.jpg", "2026:05:30 18:26:05", seed=11),
    Shot(
        "planking.all_planks", "2026/2026-06-13-sheer-strakes/last-strake.jpg", "2026:06:13 20:04:30", seed=11
    ),
    Shot(
        "planking.fair_laps", "2026/2026-06-14-looking/fair.jpg", "2026:06:14 19:10:02", exif=False, seed=11
    ),
    Shot("planking.coated", "2026/2026-06-20-second-coat/coated.jpg", "2026:06:20 19:03:27", seed=11),
    Shot("inside.turned", "2026/2026-06-27/turned.jpg", "2026:06:27 16:20:14", position=OPEN_SEA, seed=11),
    Shot(
        "inside.bilge",
        "2026/2026-08-15-floors/floors.jpg",
        "2026:08:15 17:48:39",
        orientation=6,
        upright=True,
        seed=5,
    ),
    Shot("inside.thwarts", "2026/2026-08-22-thwarts/thwarts.jpg", "2026:08:22 18:33:00", seed=5),
    Shot("inside.knee", "2026/2026-09-03-knee-again/knee.jpg", "2026:09:03 18:12:26", upright=True, seed=5),
    Shot("inside.rails_on", "2026/2026-09-05-rails/rails.jpg", "2026:09:05 17:55:41", seed=5),
    Shot("spars.mast_on_horses", "2026/spars/2026-09-19-mast-blank/mast.jpg", "2026:09:19 18:17:33", seed=5),
    Shot(
        "spars.oars_on_bench",
        "2026/spars/2026-09-27-oars/oars.jpg",
        "2026:09:27 17:01:50",
        position=ADRIFT,
        seed=5,
    ),
    Shot("finishing.primed", "2026/2026-10-04-primer/primed.jpg", "2026:10:04 16:42:08", seed=5),
    Shot(
        "finishing.wet_paint", "2026/2026-10-10-paint/wet.jpg", "2026:10:10 19:29:15", orientation=3, seed=5
    ),
    Shot("finishing.varnish_tins", "2026/2026-10-17-varnish/tins.jpg", "2026:10:17 17:20:46", seed=5),
    Shot("finishing.sailcloth", "2026/2026-10-25-sail-kit/sailcloth.jpg", "2026:10:25 16:08:57", seed=5),
    Shot(
        "finishing.painted_inside_out",
        "2026/2026-11-07-where-she-stands/painted.jpg",
        "2026:11:07 14:51:19",
        seed=5,
    ),
    Shot(
        "finishing.thwart_varnish",
        "2026/2026-11-07-where-she-stands/inside.jpg",
        "2026:11:07 14:53:02",
        seed=5,
    ),
    Shot("lofting.offsets_on_bench", "2025/2025-04-05-offsets/bench.jpg", "2025:04:05 18:41:20", seed=3),
    Shot(
        "lofting.loft_from_ladder",
        "2025/2025-05-03-half-breadths/boards.jpg",
        "2025:05:03 15:07:44",
        orientation=8,
        seed=3,
    ),
    Shot(
        "lofting.batten_and_weights", "2025/2025-04-26-sheer-line/batten.jpg", "2025:04:26 17:12:09", seed=3
    ),
    Shot(
        "lofting.loft_by_lamp",
        "2025/2025-04-30-by-lamp/loft.jpg",
        "2025:04:30 21:48:33",
        position=OPEN_SEA,
        seed=3,
    ),
    Shot(
        "lofting.body_plan",
        "2025/2025-05-10-body-plan/body-plan.jpg",
        "2025:05:10 20:15:57",
        orientation=6,
        upright=True,
        seed=3,
    ),
    Shot(
        "lofting.plan_on_wall",
        "2025/2025-05-24-lofted/wall.jpg",
        "2025:05:24 21:02:11",
        orientation=2,
        seed=3,
    ),
    Shot(
        "setting_up.strongback_squared",
        "2025/2025-06-14-strongback/strongback.jpg",
        "2025:06:14 08:22:40",
        orientation=4,
        seed=2,
    ),
    Shot("setting_up.moulds_leaning", "2025/2025-07-19-moulds-cut/moulds.jpg", "2025:07:19 17:35:18", seed=2),
    Shot(
        "setting_up.mould_by_the_string",
        "2025/2025-08-09-first-moulds/plumb.jpg",
        "2025:08:09 14:50:02",
        orientation=4,
        seed=2,
    ),
    Shot("setting_up.three_moulds", "2025/2025-08-16-three-up/three.jpg", "2025:08:16 19:44:36", seed=2),
    Shot("setting_up.stem_in_clamps", "2025/2025-09-20-stem/stem.jpg", "2025:09:20 21:16:05", seed=4),
    Shot(
        "setting_up.bench_tools",
        "2025/2025-10-04-stem-shaped/tools.jpg",
        "2025:10:04 16:58:47",
        orientation=2,
        seed=4,
    ),
    Shot(
        "setting_up.boards_on_horses",
        "2025/2025-06-07-lumber/rails.jpg",
        "2025:06:07 14:20:13",
        position=ADRIFT,
        seed=4,
    ),
    Shot(
        "setting_up.transom_and_pattern",
        "2025/2025-11-08-transom/transom.jpg",
        "2025:11:08 15:33:28",
        orientation=5,
        seed=4,
    ),
    Shot(
        "setting_up.skeleton_in_grey", "2026/2026-01-10-backbone-on/grey.jpg", "2026:01:10 15:41:50", seed=6
    ),
    Shot(
        "setting_up.stem_from_the_floor",
        "2026/2026-01-17-plumb-again/from-below.jpg",
        "2026:01:17 20:37:29",
        upright=True,
        seed=6,
    ),
    Shot(
        "setting_up.through_the_window", "2026/2026-01-24-all-plumb/window.jpg", "2026:01:24 22:04:12", seed=6
    ),
    Shot(
        "bench.scarf_jig",
        "2026/2026-02-28-scarf-jig/jig.jpg",
        "2026:02:28 17:22:31",
        orientation=7,
        seed=6,
    ),
    Shot("planking.lap_bevel_by_flash", "2026/2026-04-07/bevel.jpg", "2026:04:07 21:19:04", seed=9),
    Shot(
        "bench.scarf_under_weights", "2026/2026-04-04-scarf-batch/weights.jpg", "2026:04:04 21:30:46", seed=9
    ),
    Shot(
        "bench.planks_on_horses",
        "2026/2026-04-26-more-scarfs/sixteen-feet.jpg",
        "2026:04:26 15:26:08",
        seed=9,
    ),
    Shot("planking.morning_door", "2026/2026-04-25/morning.jpg", "2026:04:25 08:03:55", seed=9),
    Shot(
        "planking.from_the_door_at_night",
        "2026/2026-05-09-fifth-starboard/from-the-drive.jpg",
        "2026:05:09 21:51:10",
        seed=9,
    ),
    Shot(
        "planking.under_the_moulds",
        "2026/2026-05-24/from-below.jpg",
        "2026:05:24 20:40:15",
        upright=True,
        orientation=6,
        seed=9,
    ),
    Shot("planking.from_ladder", "2026/2026-06-09/ladder.jpg", "2026:06:09 18:55:21", seed=9),
    Shot("planking.sanding", "2026/2026-06-20-first-coat/sanded.jpg", "2026:06:19 21:05:40", seed=12),
    Shot("inside.shell_from_ladder", "2026/2026-08-04-back/shell.jpg", "2026:08:04 17:40:33", seed=12),
    Shot("inside.along_the_rail", "2026/2026-09-13-breasthook/rail.jpg", "2026:09:13 08:47:58", seed=12),
    Shot("inside.evening_inside", "2026/2026-08-29-knees/evening.jpg", "2026:08:29 20:06:17", seed=12),
    Shot("spars.mast_eight_sided", "2026/2026-10-31-mast-taper/eight.jpg", "2026:10:31 17:49:26", seed=12),
    Shot("spars.rudder_and_board", "2026/2026-11-14-rudder/blanks.jpg", "2026:11:14 15:12:37", seed=12),
    Shot("finishing.taped_sheer", "2026/2026-10-17-varnish/taped.jpg", "2026:10:17 09:31:14", seed=12),
    Shot(
        "finishing.sheer_by_flash", "2026/2026-10-20-second-varnish/wet.jpg", "2026:10:20 20:22:49", seed=12
    ),
]
