"""Expected values of the rows of cases.json that a library computes: what of a round light is seen past an edge and past a needle.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Line, Max, Min, Point, Rational, integrate, pi, sqrt, symbols

from rows import printed, row, write

geometry = f"sympy {sympy.__version__}, sympy.geometry and integrate, run here"
because = "the same lines and areas, exact there, printed to fifteen digits"
x = symbols("x", real=True)


def area(low, high, radius):
    """Of a disc about the origin, between two upright lines."""
    low, high = Max(-radius, Min(radius, low)), Max(-radius, Min(radius, high))
    return integrate(2 * sqrt(radius**2 - x**2), (x, low, high))


def at_light(place, edge, height, distance):
    """Where the line from a place on the surface over an edge meets the plane of the light."""
    sight = Line(Point(place, 0), Point(edge, height))
    return sight.intersection(Line(Point(0, distance), Point(1, distance)))[0].x


def shadow(index, width, height, distance, needle, places):
    width, height, distance, needle = (Rational(one) for one in (width, height, distance, needle))
    whole = pi * (width / 2) ** 2
    past_edge, past_needle = [], []
    for place in map(Rational, places):
        past_edge.append(area(at_light(place, 0, height, distance), width, width / 2) / whole)
        left, right = (at_light(place, side * needle / 2, height, distance) for side in (-1, 1))
        past_needle.append(1 - area(left, right, width / 2) / whole)
    inputs = {
        "sourceSize": printed(width, "mm"),
        "edgeHeight": printed(height, "mm"),
        "flashDistance": printed(distance, "mm"),
        "needle": printed(needle, "mm"),
        "places": [printed(Rational(place), "mm") for place in places],
    }
    expected = {"pastEdge": [printed(one.evalf(20)) for one in past_edge], "pastNeedle": [printed(one.evalf(20)) for one in past_needle]}
    title = f"a light {width} mm wide and {distance} mm up, seen past an edge and a needle {height} mm up"
    return row(f"shadow-{index}", title, geometry, inputs, expected, 1e-13, because)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [
    shadow(1, 60, 4, 300, "0.5", ["-0.3", "-0.1", "0", "0.2", "0.39"]),
    shadow(2, 100, 4, 80, "0.5", ["-2", "-0.5", "0", "1", "2.4"]),
    shadow(3, 160, 12, 60, 3, ["-15", "-4", "0.5", "7", "19"]),
]
write(__file__, published + computed)
