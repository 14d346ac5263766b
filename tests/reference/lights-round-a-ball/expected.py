"""Expected values of the rows of cases.json that libraries compute: light on both sides of a ball, and where its rim is mirrored.

Run: python3 expected.py   (Python 3, scipy 1.17.1, mpmath 1.3.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from math import cos, hypot, pi, radians, sin
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import mpmath
import scipy
from scipy.integrate import dblquad

from rows import printed, row, write

quadrature = f"scipy {scipy.__version__}, integrate.dblquad, run here"
shortest = f"mpmath {mpmath.__version__}, findroot on the length of the way, run here"


def inputs(width, distance, radius, degrees):
    return {
        "sourceSize": f"{width} mm",
        "flashDistance": f"{distance} mm",
        "ballRadius": f"{radius} mm",
        "lightAngle": f"{degrees} °",
        "luminance": 1000,
    }


def light_on(side, width, distance, radius, degrees, hole=0.0):
    """Lux at the point 45° to the left (-1) or right (1), light by light over the disc: cosine at both ends over distance squared."""
    turn, away = -radians(degrees), distance + radius
    out = (sin(turn), cos(turn))
    normal = (side * sin(pi / 4), cos(pi / 4))
    point = (radius * normal[0], radius * normal[1])

    def piece(angle, rho):
        aside, up = rho * cos(angle), rho * sin(angle)
        x = away * out[0] + aside * out[1] - point[0]
        z = away * out[1] - aside * out[0] - point[1]
        squared = x * x + z * z + up * up
        arriving = x * normal[0] + z * normal[1]
        leaving = x * out[0] + z * out[1]
        return rho * max(0.0, arriving) * max(0.0, leaving) / squared**2

    whole, _ = dblquad(piece, hole, width / 2, 0, 2 * pi, epsabs=1e-12, epsrel=1e-10)
    return 1000 * whole


def sides(index, width, distance, radius, degrees):
    both = [light_on(side, width, distance, radius, degrees) for side in (-1, 1)]
    return row(
        f"sides-{index}",
        f"a ball of {radius} mm radius, a disc {width} mm wide {distance} mm from it, {degrees}° round to the left",
        quadrature,
        inputs(width, distance, radius, degrees),
        {"illuminance": printed(both), "lightingRatio": printed(both[0] / both[1])},
        {"relative": 2e-7},
        "where the horizon cuts the disc the integrand has a kink that quadrature meets to this",
    )


def ring(index, width, distance, radius):
    both = [light_on(side, width, distance, radius, 0, hole=width / 4) for side in (-1, 1)]
    given = inputs(width, distance, radius, 0) | {"ring": 1}
    return row(
        f"ring-{index}",
        f"a ball of {radius} mm radius, a ring {width} mm wide {distance} mm from it",
        quadrature,
        given,
        {"illuminance": printed(both), "lightingRatio": 1},
        {"relative": 1e-9},
        "the accuracy asked of the quadrature",
    )


def mirrored(index, width, distance, radius, degrees):
    """The way from a rim point of the disc over the ball to a camera far off has one stationary length: there the rim point is mirrored."""
    turn, away = -radians(degrees), distance + radius
    ends = []
    for side in (-1, 1):
        x = away * sin(turn) + side * width / 2 * cos(turn)
        z = away * cos(turn) - side * width / 2 * sin(turn)

        def way(p):
            return mpmath.hypot(x - radius * mpmath.sin(p), z - radius * mpmath.cos(p)) - radius * mpmath.cos(p)

        guess = mpmath.atan2(x, z) / 2
        found = mpmath.findroot(lambda p: mpmath.diff(way, p), guess)
        ends.append(float(radius * mpmath.sin(found)))
    return row(
        f"mirrored-{index}",
        f"reflection in a ball of {radius} mm radius of a disc {width} mm wide, {distance} mm off, {degrees}° round to the left",
        shortest,
        inputs(width, distance, radius, degrees),
        {"catchlight": printed(ends, "mm")},
        {"relative": 1e-9},
        "the derivative is found by small steps there",
    )


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [sides(1, 160, 60, 0.8, 45), sides(2, 100, 80, 10, 30), sides(3, 300, 120, 4, 60), sides(4, 60, 300, 25, 20)]
computed += [ring(1, 160, 60, 0.8), ring(2, 90, 40, 12)]
computed += [mirrored(1, 160, 60, 0.8, 0), mirrored(2, 60, 300, 0.8, 45), mirrored(3, 300, 100, 8, 30), mirrored(4, 100, 50, 40, 60)]
write(__file__, published + computed)
