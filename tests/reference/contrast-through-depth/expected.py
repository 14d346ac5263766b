"""Rows of cases.json: what a deep subject keeps of a fine pattern, by quadrature over two shifted pupils, and how its ends blur, by tracing.

Run: python3 expected.py   (Python 3, scipy 1.17.1, sympy 1.14.0); writes cases.json, the rows of published.json first.
"""
import json
import sys
from math import cos, pi, sqrt
from pathlib import Path

import sympy
from scipy import __version__
from scipy.integrate import dblquad, quad
from scipy.optimize import brentq
from scipy.special import jn_zeros
from sympy.physics.optics.gaussopt import FreeSpace, GeometricRay, ThinLens

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))
from rows import row, write

wavelength, c = 0.00055, 0.02
frequency = 1 / (2 * c)
marks = [2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20, 22, 25, 29, 32]
source = f"scipy {__version__}, integrate.quad: overlap of two round pupils"


def cone(m, p, mark):
    """Effective f-number, and the pattern as a share of the cutoff."""
    effective = mark * (1 + m / p)
    return effective, frequency * wavelength * effective


def transfer(waves, share):
    """Of a round pupil so many waves out of focus."""
    if share >= 1:
        return 0.0
    strip = lambda x: 2 * sqrt(max(0.0, 1 - (x + share) ** 2)) * cos(8 * pi * waves * share * x)
    return 2 * quad(strip, 0, 1 - share, limit=400, epsabs=1e-11)[0] / pi


def spherical_transfer(defocus, spherical, share):
    """The same with spherical aberration: over the quarter of the overlap in which x and y are positive."""
    height = lambda x: sqrt(max(0.0, 1 - (x + share) ** 2))
    phase = lambda y, x: cos(8 * pi * share * x * (defocus + 2 * spherical * (x * x + y * y + share * share)))
    return 4 * dblquad(phase, 0, 1 - share, 0, height, epsabs=1e-9)[0] / pi


def waves_at(m, p, mark, off):
    """Of defocus, so far off the sharp plane: the blur m² off/N_w over 8 λ N_w."""
    effective, _ = cone(m, p, mark)
    return m * m * off / (8 * wavelength * effective**2)


def worst(m, p, depth, mark, places=400):
    _, share = cone(m, p, mark)
    least = 1.0
    for step in range(places + 1):
        least = min(least, transfer(waves_at(m, p, mark, depth / 2 * step / places), share))
        if least <= 0:
            return 0.0
    return least


rows = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
for identity, words, m, p, depth in [
    ("worst-life-size", "2 mm deep at life size", 1, 0.85, 2),
    ("worst-half-life-size", "7 mm deep at half life size", 0.5, 1.1, 7),
    ("worst-three-times", "0.6 mm deep at three times life size", 3, 0.85, 0.6),
]:
    chosen = [8, 11, 14, 16, 22, 32]
    rows.append(
        row(
            identity,
            f"least contrast left anywhere in a subject {words}, marks from f/8 to f/32",
            source,
            {"magnification": m, "pupilMagnification": p, "subjectDepth": f"{depth} mm", "fNumbers": chosen},
            {"contrast": [round(worst(m, p, depth, mark), 6) for mark in chosen]},
            1e-4,
            "the library looked at 401 places from the middle to an end",
        )
    )
    all_marks = {mark: worst(m, p, depth, mark, 100) for mark in marks}
    rows.append(
        row(
            f"{identity}-best",
            f"the mark with most left in the worst place, {words}",
            source,
            {"magnification": m, "pupilMagnification": p, "subjectDepth": f"{depth} mm", "fNumbers": marks},
            {"fNumber": max(all_marks, key=all_marks.get)},
            1e-9,
            "one of the marks",
        )
    )

places = [0, 0.25, 0.5, 0.75, 1]
for identity, words, spherical in [("through-the-depth", "perfect lens", 0), ("through-aberrated", "one wave of spherical aberration", 1)]:
    mark, n0, m, p, depth = 8, 5.6, 1, 0.85, 1
    w040 = spherical * (n0 / mark) ** 4
    _, share = cone(m, p, mark)
    rows.append(
        row(
            identity,
            f"contrast at five places of a subject 1 mm deep, f/8 at life size, {words} at f/5.6",
            source.replace("quad", "dblquad"),
            {"magnification": m, "pupilMagnification": p, "subjectDepth": f"{depth} mm", "fNumber": mark, "maxAperture": n0,
             "sphericalAberration": spherical, "placeDepth": [f"{place} mm" for place in places]},
            {"contrast": [
                round(max(0.0, spherical_transfer(waves_at(m, p, mark, place - depth / 2) - w040, w040, share)), 6)
                for place in places
            ]},
            1e-5,
            "six decimals kept",
        )
    )



def traced_blur(f, m, depth, mark):
    """Width on the sensor of the ends of a depth, half the sum of both, through a thin lens f/mark wide: rays through its rim."""
    s, image = f * (1 + 1 / m), f * (1 + m)
    rim = f / (2 * mark)
    widths = []
    for point in (s - depth / 2, s + depth / 2):
        ray = GeometricRay(0, rim / point)
        widths.append(2 * abs(float((FreeSpace(image) * ThinLens(f) * FreeSpace(point) * ray)[0])))
    return sum(widths) / 2


trace = f"sympy {sympy.__version__}, physics.optics.gaussopt: rays through the rim of a thin lens"
for f, m, depth, mark in [(100, 1, 2, 8), (200, 0.5, 4, 16), (100, 3, 0.6, 11)]:
    rows.append(
        row(
            f"ends-traced-{f}-{mark}",
            f"blur of the ends of {depth} mm at {m} times life size, {f} mm thin lens at f/{mark}, half the sum of both",
            trace,
            {"magnification": m, "subjectDepth": f"{depth} mm", "fNumber": mark},
            {"defocusBlur": f"{traced_blur(f, m, depth, mark):.9f} mm"},
            {"relative": 2e-4},
            "the close-up form leaves out the square of the half depth over the distance, below 1/5000",
        )
    )
    # The first dark ring stands at the first zero of J1.
    airy = lambda n: 2 * jn_zeros(1, 1)[0] / pi * wavelength * n * (1 + m)
    rows.append(
        row(
            f"balance-traced-{f}-{mark}",
            f"mark at which the traced ends are as wide as the Airy disc: {depth} mm at {m} times life size, {f} mm",
            f"{trace}; scipy {__version__}, special.jn_zeros and optimize.brentq",
            {"magnification": m, "subjectDepth": f"{depth} mm"},
            {"balancedFNumber": round(brentq(lambda n: traced_blur(f, m, depth, n) - airy(n), 0.5, 200), 6)},
            {"relative": 2e-4},
            "the close-up form leaves out the square of the half depth over the distance, below 1/5000",
        )
    )

write(__file__, rows)
