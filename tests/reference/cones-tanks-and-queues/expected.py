"""Expected values of cases.json: limits of cones by exact plane geometry, tanks by ray-transfer matrices, defocus by lengths of paths,
shares of light by powers of two, and waits in turn as a longest path.

Run: python3 expected.py   (Python 3, sympy 1.14, mpmath, numpy, networkx 3.6.1), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import mpmath
import networkx
import numpy
import sympy
from sympy import Line, Point, Rational
from sympy.physics.optics.gaussopt import FlatRefraction, FreeSpace, GeometricRay

from rows import printed, row, write

axis = Line(Point(0, 0), Point(1, 0))


def rays(circle, f_number, magnification, pupil):
    """The two rays by way of one rim of the pupil that cut the sharp plane (x = 0) at the two sides of the spot c/m."""
    slope, half = magnification / (2 * f_number), circle / (2 * magnification)
    if pupil is None:
        return [Line(Point(0, side * half), slope=slope) for side in (-1, 1)]
    rim = Point(pupil, pupil * slope)
    return [Line(Point(0, side * half), rim) for side in (-1, 1)]


def cone(index, circle, f_number, magnification, pupil):
    near, far = [line.intersection(axis)[0].x for line in rays(circle, f_number, magnification, pupil)]
    title = f"c {float(circle)} mm, effective f/{float(f_number):g}, m {float(magnification):g}, " + (
        "telecentric" if pupil is None else f"pupil {float(pupil):g} mm from the subject"
    )
    inputs = {
        "circleOfConfusion": f"{float(circle)} mm",
        "effectiveFNumber": float(f_number),
        "magnification": float(magnification),
        "inverseEntrancePupilDistance": 0 if pupil is None else float(1 / pupil),
    }
    expected = {"near": printed(near, "mm"), "far": printed(-far, "mm"), "depth": printed(near - far, "mm")}
    return row(
        f"cone-{index}",
        title,
        f"sympy {sympy.__version__}, Line.intersection, run here: rays by way of the pupil's rim and the sides of the spot",
        inputs,
        expected,
        {"relative": 1e-12},
        "the same triangles in exact fractions; rounding",
    )


def tank(index, refractive_index, depth):
    """How deep a stretch of the medium is that looks as deep as *depth* through its flat face."""
    seen = sympy.Symbol("seen", positive=True)
    ray = FlatRefraction(refractive_index, 1) * FreeSpace(seen) * GeometricRay(0, Rational(1, 1000))
    apparent = ray.height / ray.angle
    real = sympy.solve(sympy.Eq(apparent, depth), seen)[0]
    return row(
        f"tank-{index}",
        f"{float(depth):g} mm of depth in air, behind a flat face of index {float(refractive_index):g}",
        f"sympy {sympy.__version__}, physics.optics.gaussopt, run here: refraction at a flat face",
        {"refractiveIndex": float(refractive_index), "depthOfField": f"{float(depth):g} mm"},
        {"depth": printed(real, "mm")},
        {"relative": 1e-12},
        "rounding",
    )


def defocus(index, depth, aperture, wavelength):
    """A point moved by half the depth: how much its path to the rim and its path along the axis differ more than before, in waves."""
    with mpmath.workdps(60):
        far = mpmath.mpf(10) ** 25
        sine = mpmath.mpf(aperture)
        cosine = mpmath.sqrt(1 - sine**2)
        moved = mpmath.mpf(depth) / 2
        rim = mpmath.hypot(far * sine, far * cosine - moved)
        along = far - moved
        waves = (rim - along) / mpmath.mpf(wavelength)
    return row(
        f"defocus-{index}",
        f"{depth} mm deep, NA {aperture}, {float(wavelength) * 1e6:g} nm",
        f"mpmath {mpmath.__version__}, hypot at 60 digits, run here: lengths of the paths to a pupil far away",
        {"subjectDepth": f"{depth} mm", "numericalAperture": float(aperture), "wavelength": f"{wavelength} mm"},
        {"waves": printed(waves)},
        {"relative": 1e-12},
        "rounding",
    )


def queue(index, frames, exposure, settling, recycling):
    tasks = networkx.DiGraph()
    for frame in range(frames):
        tasks.add_edge(("open", frame), ("shut", frame), weight=exposure)
        if frame + 1 < frames:
            tasks.add_edge(("shut", frame), ("still", frame), weight=settling)
            tasks.add_edge(("still", frame), ("open", frame + 1), weight=recycling)
    time = networkx.dag_longest_path_length(tasks)
    return row(
        f"queue-{index}",
        f"{frames} frames of {exposure} s, {settling} s to settle and then {recycling} s to recycle",
        f"networkx {networkx.__version__}, dag_longest_path_length, run here",
        {
            "frameCount": frames,
            "exposureTime": f"{exposure} s",
            "settlingTime": f"{settling} s",
            "recyclingTime": f"{recycling} s",
        },
        {"time": printed(time, "s")},
        {"relative": 1e-12},
        "sums of the same numbers in another order",
    )


stops = [-3, -0.5, 0, 1, 1.5, 4]
shares = row(
    "shares",
    "what light alone gives of a full exposure, so many stops below it",
    f"numpy {numpy.__version__}, exp2, run here",
    {"stops": stops},
    {"share": printed([numpy.exp2(-stop) for stop in stops])},
    {"relative": 1e-14},
    "rounding",
)

of = Rational
write(
    __file__,
    [
        cone(1, of(3, 100), of(12), of(1, 2), of(145)),
        cone(2, of(1, 50), of(57, 10), of(1), None),
        cone(3, of(3, 100), of(30), of(27, 10), of(-339, 10)),
        cone(4, of(1, 10), of(8), of(1, 50), of(2650)),
        tank(1, of(4, 3), of(8, 10)),
        tank(2, of(3, 2), of(12)),
        defocus(1, "0.02", "0.25", "0.00055"),
        defocus(2, "0.003", "0.8", "0.00048"),
        shares,
        queue(1, 13, 0.5, 2, 1),
        queue(2, 40, 0.02, 0.6, 3.5),
    ],
)
