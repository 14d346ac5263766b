"""Expected values of cases.json: close-up lenses on lenses of two glasses, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Abs, Rational, diff
from sympy.physics.optics import ThinLens

from chain import effective_f_number, image_side, lenses, magnification, subject_side, through, x
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"

abbe = 60


def case(index, name, gap, power, ahead):
    """The lens focused on a point *ahead* of its front glass, then a lens of so many dioptres mounted *gap* before it."""
    lens = lenses[name]
    close_up = ThinLens(Rational(1000) / power)
    # The sensor stays where the focused lens has its image; at infinity that is the back focus.
    sensor = lens.back_focus if ahead is None else image_side(lens.glass, ahead)
    alone = 0 if ahead is None else magnification(lens.glass, ahead, sensor)
    chain = [close_up, gap, *lens.glass]
    working = subject_side(chain, sensor)
    cone = effective_f_number([close_up, gap, *lens.to_stop], lens.from_stop, lens.hole, working, sensor)
    # Blue and red: the power differs by one Abbe-numberth, so the sharp plane shifts as it begins to with the power.
    coloured = through(ThinLens(Rational(1000) / x), gap, *lens.glass, sensor)
    shift = Abs(diff(-coloured.B / coloured.A, x).subs(x, power)) * power / abbe
    inputs = {
        "abbeNumber": abbe,
        "closeUpPower": printed(power, "dpt"),
        "focalLength": printed(lens.focal_length, "mm"),
        "focusMagnification": printed(alone),
        "fNumber": printed(lens.f_number),
        "pupilMagnification": printed(lens.pupil_magnification),
    }
    if ahead is not None:
        inputs["mainLensSubjectDistance"] = printed(ahead + lens.front_principal_depth, "mm")
        inputs["closeUpGap"] = printed(gap + lens.front_principal_depth, "mm")
    expected = {
        "magnification": printed(magnification(chain, working, sensor)),
        "workingDistance": printed(working, "mm"),
        "effectiveFNumber": printed(cone),
    }
    expected["colourSpread"] = printed(shift, "mm")
    if ahead is None:
        # Along the axis lengths are enlarged by the square of the magnification.
        expected["colourSpreadAtSensor"] = printed(shift * magnification(chain, working, sensor) ** 2, "mm")
    where = "at infinity" if ahead is None else f"focused {ahead} mm ahead of its front glass"
    title = f"+{power} dpt, {gap} mm before a {name} lens {where}"
    return row(f"close-up-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


setups = [
    ("nearly symmetric", 5, 2, None),
    ("retrofocus", 8, 4, None),
    ("telephoto", 10, 5, None),
    ("nearly symmetric", 5, 4, 500),
    ("retrofocus", 8, 2, 250),
    ("telephoto", 120, 3, 1500),
    ("short", 4, 10, 150),
]
write(__file__, [case(index, *setup) for index, setup in enumerate(setups, 1)])
