#!/usr/bin/env python3
"""Draws the table of src/bench/sizes, both ways by powers of ten: from standard input to standard output, SVG."""
import math
import sys

WIDTH, HEIGHT, LEFT, TOP, RIGHT, BOTTOM = 720, 440, 84, 28, 160, 56
rows = [list(map(int, line.split())) for line in sys.stdin if line[0].isdigit()]
lowest, highest = 100, 100_000


def x(entries):
    span = math.log10(rows[-1][0]) - math.log10(rows[0][0])
    return LEFT + (WIDTH - LEFT - RIGHT) * (math.log10(entries) - math.log10(rows[0][0])) / span


def y(ms):
    span = math.log10(highest) - math.log10(lowest)
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (math.log10(ms) - math.log10(lowest)) / span


def line(column, name, dashes):
    points = [(x(row[0]), y(row[column])) for row in rows]
    print(f'<polyline fill="none" stroke="#1d3f5e" stroke-width="2.5" stroke-dasharray="{dashes}" points="'
          + " ".join(f"{px:.1f},{py:.1f}" for px, py in points) + '"/>')
    for px, py in points:
        print(f'<circle cx="{px:.1f}" cy="{py:.1f}" r="3.5" fill="#1d3f5e"/>')
    px, py = points[-1]
    print(f'<text x="{px + 12:.1f}" y="{py + 5:.1f}">{name}</text>')


print(f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" font-family="sans-serif" '
      'font-size="14" fill="#222" role="img" aria-label="Seconds a publish takes, against the number of entries">')
print(f'<rect width="{WIDTH}" height="{HEIGHT}" fill="#fff"/>')
for ms, said in ((100, "0.1 s"), (1000, "1 s"), (10_000, "10 s"), (100_000, "100 s")):
    print(f'<path stroke="#ccc" d="M{LEFT} {y(ms):.1f}H{WIDTH - RIGHT}"/>')
    print(f'<text x="{LEFT - 10}" y="{y(ms) + 5:.1f}" text-anchor="end">{said}</text>')
for row in rows:
    print(f'<text x="{x(row[0]):.1f}" y="{HEIGHT - BOTTOM + 24}" text-anchor="middle">{row[0]:,}</text>')
print(f'<text x="{(LEFT + WIDTH - RIGHT) / 2:.1f}" y="{HEIGHT - 10}" text-anchor="middle">entries of 270 words</text>')
line(1, "first publish", "none")
line(2, "nothing changed", "7 5")
print("</svg>")
