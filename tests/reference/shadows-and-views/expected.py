"""Expected values of the rows of cases.json that sympy computes: shadows, edges and tilted things, by lines that meet.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Line, Point, Rational, Segment, pi

from rows import printed, row, write

source = f"sympy {sympy.__version__}, sympy.geometry, run here"
because = "the same lines, in exact fractions there, printed to fifteen digits"
tolerance = {"relative": 1e-12}
ground = Line(Point(0, 0), Point(1, 0))


def smeared(width, edge, height):
    """From the two ends of what is *width* wide and *height* up, lines over an edge: how far apart they meet the ground."""
    tip = Point(0, edge)
    ends = [Point(side * Rational(width) / 2, height) for side in (1, -1)]
    left, right = [ground.intersection(Line(end, tip))[0] for end in ends]
    return left.distance(right)


def penumbra(index, width, edge, height):
    inputs = {
        "sourceSize": printed(Rational(width), "mm"),
        "edgeHeight": printed(Rational(edge), "mm"),
        "flashDistance": printed(Rational(height), "mm"),
    }
    title = f"shadow of an edge {edge} mm up, in a light {width} mm wide and {height} mm up"
    expected = {"penumbra": printed(smeared(width, Rational(edge), Rational(height)), "mm")}
    return row(f"penumbra-lines-{index}", title, source, inputs, expected, tolerance, because)


def hidden(index, pupil, edge, height):
    inputs = {
        "entrancePupil": printed(Rational(pupil), "mm"),
        "edgeHeight": printed(Rational(edge), "mm"),
        "entrancePupilDistance": printed(Rational(height), "mm"),
    }
    title = f"an edge {edge} mm above the background, before a pupil {pupil} mm wide and {height} mm up"
    expected = {"hiddenBand": printed(smeared(pupil, Rational(edge), Rational(height)), "mm")}
    return row(f"hidden-band-lines-{index}", title, source, inputs, expected, tolerance, because)


def angle(index, width, distance):
    """Between the lines from one point to the two ends of a light, and how far it stands for that angle."""
    ends = [Point(distance, side * Rational(width) / 2) for side in (1, -1)]
    between = Line(Point(0, 0), ends[0]).angle_between(Line(Point(0, 0), ends[1]))
    inputs = {"sourceSize": printed(width, "mm"), "flashDistance": printed(distance, "mm")}
    expected = {"sourceAngle": printed(between.evalf(20)), "flashDistance": printed(distance, "mm")}
    title = f"a light {width} mm wide, {distance} mm away"
    return row(f"source-angle-lines-{index}", title, source, inputs, expected, tolerance, because)


def tilt(index, length, degrees):
    """How deep a segment reaches after a turn."""
    turned = Segment(Point(0, 0), Point(length, 0)).rotate(pi * degrees / 180)
    inputs = {"subjectWidth": printed(length, "mm"), "subjectTilt": f"{degrees} °"}
    expected = {"subjectDepth": printed((turned.p2.y - turned.p1.y).evalf(20), "mm")}
    title = f"a flat subject {length} mm long, tilted by {degrees}°"
    return row(f"tilt-lines-{index}", title, source, inputs, expected, tolerance, because)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [penumbra(1, 60, 5, 300), penumbra(2, 400, "12.5", 500), penumbra(3, "2.82", 14, 314)]
computed += [hidden(1, 10, 5, 105), hidden(2, "6.25", "0.8", 93)]
computed += [angle(1, 60, 300), angle(2, 400, 250), angle(3, 5, 2000)]
computed += [tilt(1, 20, 30), tilt(2, 35, 7), tilt(3, 8, 62)]
write(__file__, published + computed)
