#!/usr/bin/env python3
"""Draws docs/architecture.svg: the packages as the stations of a hull, in the order that FlowTest has them.

A new package needs a place in STAGES; run this from the project's folder and look at the drawing."""
import pathlib
import re

STAGES = [
    ("values", ["problem", "measure", "shop", "memory"]),
    ("reading", ["journal", "prose", "photo", "album"]),
    ("reckoning", ["ledger", "pieces", "joints", "stock", "plan", "nights", "jobs", "ahead"]),
    ("telling", ["recap", "chart", "site", "telling", "postcard", "feed"]),
    ("writing", ["press"]),
    ("adding", ["spoken", "card", "past", "desk"]),
    ("commands", ["preview", "cli"]),
]
ENTRY_PASSES = ["journal", "album", "ledger", "site", "press"]

# Curves of a lines plan, each a cubic from the stem to the transom.
SHEER = [(44, 84), (330, 176), (760, 176), (1104, 118)]
RABBET = [(70, 250), (250, 372), (800, 372), (1104, 330)]
WATERLINES = [
    [(52, 122), (330, 220), (770, 222), (1104, 176)],
    [(62, 178), (300, 268), (780, 270), (1104, 234)],
    [(80, 232), (290, 318), (790, 320), (1104, 284)],
]
WAY = [(20, 64), (330, 152), (760, 152), (1140, 88)]
FIRST, LAST = 92, 1062

HEAD = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1180 470" role="img" aria-labelledby="t d">
<title id="t">The packages of Ribband, drawn as the stations of a hull</title>
<desc id="d">A hull seen from the side. Notes enter at the stem, the site leaves at the transom. Each station is a package, in order, and uses only those nearer to the stem. One line runs through the stations that an entry passes: journal, album, ledger, site, press.</desc>
<style>
  svg { background: #eef1ef; color: #14283b; font-family: ui-sans-serif, "Avenir Next", "Segoe UI", sans-serif; }
  .line { fill: none; stroke: currentColor; stroke-width: 1.6; }
  .hair { fill: none; stroke: currentColor; stroke-width: 0.6; opacity: 0.45; }
  .way { fill: none; stroke: #b3271e; stroke-width: 2.2; }
  .stop { fill: #eef1ef; stroke: #b3271e; stroke-width: 2.2; }
  text { fill: currentColor; font-size: 15px; letter-spacing: 0.04em; }
  .stage { font-size: 14px; text-anchor: middle; }
  .end { font-size: 14px; }
  @media (prefers-color-scheme: dark) {
    svg { background: #0d2740; color: #e4eef5; }
    .way { stroke: #ffb84d; }
    .stop { fill: #0d2740; stroke: #ffb84d; }
  }
</style>"""


def height(curve, x):
    """The height of a curve over a place, found by halving."""
    low, high = 0.0, 1.0
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if point(curve, middle)[0] < x else (low, middle)
    return point(curve, low)[1]


def point(curve, t):
    weights = ((1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t * t, t**3)
    return tuple(sum(w * p[axis] for w, p in zip(weights, curve)) for axis in (0, 1))


def path(kind, curve):
    numbers = [n for p in curve for n in p]
    return f'<path class="{kind}" d="M%g %gC%g %g %g %g %g %g"/>' % tuple(numbers)


def drawing(flow):
    if [package for _, packages in STAGES for package in packages] != flow:
        raise SystemExit("STAGES are not the flow: " + " ".join(flow))
    apart = (LAST - FIRST) / (len(flow) - 1)
    station = {package: FIRST + i * apart for i, package in enumerate(flow)}
    yield HEAD
    for x in station.values():
        yield f'<path class="hair" d="M{x:.1f} {height(SHEER, x):.1f}V{height(RABBET, x):.1f}"/>'
    yield from (path("hair", line) for line in WATERLINES)
    yield path("line", SHEER)
    yield path("line", RABBET)
    yield '<path class="line" d="M44 84C46 150 54 210 70 250"/>'
    yield '<path class="line" d="M1104 118L1104 330"/>'
    yield '<path class="line" d="M70 250C240 392 800 394 1104 348V330"/>'
    for package, x in station.items():
        foot = f"translate({x - 5:.1f} {height(RABBET, x) - 14:.1f})rotate(-90)"
        yield f'<text class="package" transform="{foot}">{package}</text>'
    yield path("way", WAY)
    for package in ENTRY_PASSES:
        x = station[package]
        yield f'<circle class="stop" cx="{x:.1f}" cy="{height(WAY, x):.1f}" r="4.5"/>'
    yield '<text class="end" x="20" y="48">notes</text>'
    yield '<text class="end" x="1140" y="72" text-anchor="end">a site</text>'
    middle = (station["stock"] + station["plan"]) / 2
    lift = height(WAY, station["plan"]) - 14
    yield f'<text class="stage" x="{middle:.1f}" y="{lift:.1f}">the way of one entry</text>'
    for stage, packages in STAGES:
        start = station[packages[0]] - 12
        end = station[packages[-1]] + (8 if len(packages) > 1 else 12)
        yield f'<path class="line" d="M{start:.1f} 408v8H{end:.1f}v-8"/>'
        yield f'<text class="stage" x="{(start + end) / 2:.1f}" y="438">{stage}</text>'
    yield "</svg>"


source = pathlib.Path("src/test/java/ribband/architecture/FlowTest.java").read_text("utf-8")
listed = re.search(r"FLOW =\s*List.of\((.*?)\);", source, re.S).group(1)
lines = drawing(re.findall(r'"([a-z]+)"', listed))
pathlib.Path("docs/architecture.svg").write_text("\n".join(lines) + "\n", "utf-8")
