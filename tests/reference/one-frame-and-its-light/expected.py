"""Expected values of the rows of cases.json that sympy computes: how far to stop down for a depth, and how deep one frame can be.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational, diff, nsolve, solve, sqrt, symbols

from rows import printed, row, write

solver = f"sympy {sympy.__version__}, nsolve and diff, run here"
N = symbols("N", positive=True)


def opening(index, m, depth, c, wavelength):
    """The least N at which the blur of the ends and that of diffraction together are c, by Newton from geometry's N."""
    m, depth, c, wavelength = map(Rational, (m, depth, c, wavelength))
    by_geometry = m**2 * depth / (2 * c)
    both = (m**2 * depth / (2 * N)) ** 2 + (wavelength * N) ** 2 - c**2
    found = nsolve(both, N, float(by_geometry), prec=30)
    assert by_geometry < found < c / (sqrt(2) * wavelength)
    inputs = {
        "magnification": printed(m),
        "subjectDepth": printed(depth, "mm"),
        "circleOfConfusion": printed(c, "mm"),
        "wavelength": printed(wavelength, "mm"),
    }
    title = f"{float(depth)} mm of depth at {float(m)}×, blurred by {float(c)} mm at most"
    because = "the same equation, solved there by Newton's method to thirty digits"
    return row(f"opening-in-one-frame-{index}", title, solver, inputs, {"effectiveFNumber": printed(found)}, {"relative": 1e-11}, because)


def deepest(index, m, c, wavelength):
    """The depth whose least blur, over all N, is c: where the blur's derivative is nought."""
    m, c, wavelength = map(Rational, (m, c, wavelength))
    depth = symbols("depth", positive=True)
    blur = (m**2 * depth / (2 * N)) ** 2 + (wavelength * N) ** 2
    (best,) = solve(diff(blur, N), N)
    (found,) = solve(blur.subs(N, best) - c**2, depth)
    inputs = {
        "magnification": printed(m),
        "circleOfConfusion": printed(c, "mm"),
        "wavelength": printed(wavelength, "mm"),
    }
    title = f"the deepest subject at {float(m)}× whose blur can be made {float(c)} mm"
    because = "exact fractions there, a few roundings here"
    return row(f"deepest-in-one-frame-{index}", title, solver, inputs, {"subjectDepth": printed(found, "mm")}, {"relative": 1e-13}, because)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [
    opening(1, "1.2", "0.4", "0.02", "0.00055"),
    opening(2, "0.6", "1.5", "0.02", "0.00055"),
    opening(3, "5", "0.01", "0.013", "0.00048"),
    deepest(1, "0.6", "0.02", "0.00055"),
    deepest(2, "3", "0.013", "0.0005"),
]
write(__file__, published + computed)
