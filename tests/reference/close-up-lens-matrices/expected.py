"""Expected values of cases.json: close-up lenses on lenses of two glasses, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy

from close_up import CloseUp
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"

abbe = 60


def case(index, name, gap, power, ahead):
    """The lens focused on a point *ahead* of its front glass, then a lens of so many dioptres mounted *gap* before it."""
    rig = CloseUp(name, gap, power, abbe, ahead)
    expected = rig.expected()
    if ahead is None:
        # Along the axis lengths are enlarged by the square of the magnification.
        expected["colourSpreadAtSensor"] = printed(rig.spread * rig.magnification**2, "mm")
    title = f"+{power} dpt, {gap} mm before a {name} lens {rig.where()}"
    return row(f"close-up-matrix-{index}", title, source, rig.inputs(), expected, {"relative": 1e-12}, because)


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
