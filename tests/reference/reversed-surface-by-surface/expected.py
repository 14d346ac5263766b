"""Expected values of cases.json: real lenses turned round, surface by surface, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational
from sympy.physics.optics import CurvedRefraction, FlatRefraction

from chain import effective_f_number, magnification, only, subject_side, through, x
from rows import printed, row, write

prescriptions = json.loads(
    (Path(__file__).parents[1] / "lens-prescriptions" / "prescriptions.json").read_text(encoding="utf-8")
)
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


class Glass:
    """A prescription as matrices, *scale* times as large as printed, its stop *hole* wide."""

    def __init__(self, name, scale, hole):
        lens = prescriptions[name]
        self.hole, self.stop = Rational(hole), lens["stop"]
        number = lambda value: Rational(str(value))
        self.rows = [
            (
                None if s["radius"] == "Infinity" else number(s["radius"]) * scale,
                number(s["thickness"]) * scale,
                number(s["index"]),
            )
            for s in lens["surfaces"]
        ]
        to_stop, from_stop = self.forward(0, self.stop), self.forward(self.stop, len(self.rows))[:-1]
        glass = [*to_stop, *from_stop]
        whole = through(*glass)
        self.focal_length = -1 / whole.C
        self.front_principal_depth = (whole.D - 1) / whole.C
        self.back_focus = (1 - whole.A) / whole.C + self.focal_length
        # The point whose image in the stop's space is the stop; in front of the first surface by x, mostly below 0.
        entrance = only(through(x, *to_stop).B)
        self.entrance_pupil = self.hole / through(entrance, *to_stop).A
        self.exit_beyond = only(through(*from_stop, x).B)
        self.exit_pupil = self.hole * through(*from_stop, self.exit_beyond).A
        self.f_number = self.focal_length / self.entrance_pupil

    def forward(self, first, last):
        """Surfaces from *first* up to *last* with the way behind each."""
        elements = []
        for at in range(first, last):
            radius, thickness, index = self.rows[at]
            before = self.rows[at - 1][2] if at > 0 else Rational(1)
            elements += [refraction(radius, before, index), thickness]
        return elements

    def backward(self, first, last):
        """The same met from behind: the way before each surface, from *last* down to *first*; after the last surface of all there is none."""
        elements = []
        for at in range(last - 1, first - 1, -1):
            radius, thickness, index = self.rows[at]
            before = self.rows[at - 1][2] if at > 0 else Rational(1)
            if at < len(self.rows) - 1:
                elements.append(thickness)
            elements.append(refraction(None if radius is None else -radius, index, before))
        return elements


def refraction(radius, before, behind):
    return FlatRefraction(before, behind) if radius is None else CurvedRefraction(radius, before, behind)


def case(index, name, scale, hole, rim, register, extension, own_register, travel, source):
    """Its rim, *rim* before the first surface, faces the sensor; it is *travel* out by its focus ring."""
    lens = Glass(name, Rational(str(scale)), hole)
    rim, travel, own_register = Rational(str(rim)), Rational(str(travel)), Rational(str(own_register))
    sensor = register + extension + rim
    # From the back of the lens to its stop, and from there past its front.
    to_stop = lens.backward(lens.stop, len(lens.rows))
    from_stop = lens.backward(0, lens.stop)
    glass = [*to_stop, *from_stop]
    ahead = subject_side(glass, sensor)
    # Its flange is its own register before its image of infinity, and farther from the glass as the ring takes the glass along.
    flange = lens.back_focus - own_register + travel
    foremost = max(flange, 0)
    inputs = {
        "registerDistance": printed(register, "mm"),
        "extension": printed(extension, "mm"),
        "reversedLensRegisterDistance": printed(own_register, "mm"),
        "focusTravel": printed(travel, "mm"),
        "rearProtrusion": printed(foremost - flange, "mm"),
        "focalLength": printed(lens.focal_length, "mm"),
        "frontPrincipalDepth": printed(rim + lens.front_principal_depth, "mm"),
        "pupilMagnification": printed(lens.exit_pupil / lens.entrance_pupil),
        "fNumber": printed(lens.f_number),
    }
    expected = {
        "magnification": printed(magnification(glass, ahead, sensor)),
        "extension": printed(extension, "mm"),
        "workingDistance": printed(ahead - foremost, "mm"),
        "entrancePupilDistance": printed(ahead - lens.exit_beyond, "mm"),
        "entrancePupil": printed(lens.exit_pupil, "mm"),
        "effectiveFNumber": printed(effective_f_number(to_stop, from_stop, lens.hole, ahead, sensor)),
    }
    out = f", {float(travel):g} mm out by its focus ring" if travel else ""
    title = f"{source} turned round, {extension} mm from a flange with a register of {register} mm{out}"
    tolerance = {key: {"relative": 1e-9} for key in expected}
    return row(
        f"reversed-surfaces-{index}",
        title,
        f"{source}; sympy {sympy.__version__}, physics.optics.gaussopt, run here",
        inputs,
        expected,
        tolerance,
        f"{because}; what near lengths leave between them loses up to six",
    )


setups = [
    ("retrofocus-2", 14, 3, 5.4, 44, 4, 44, 0, "retrofocus lens of optiland, enlarged 14 times"),
    ("retrofocus-2", 14, 2, 5.4, 44, 16, 44, 2.8, "retrofocus lens of optiland, enlarged 14 times"),
    ("triplet-course", 1, 6, 4, 44, 30, 46.5, 5, "triplet of the ray-optics course"),
    ("symmetric-us-583336", 1, 4, 6, 44, 76, 45.5, 6, "US 583,336, example 2, scaled"),
    ("macro-35-us-7715118", 1, 4, 2, 44, 12, 44, 0, "US 7,715,118, example 1, at infinity"),
    ("macro-60-us-5751485", 1, 8, 3, 44, 40, 46.5, 3, "US 5,751,485, first embodiment, at infinity"),
    ("four-elements-100", 1, 7, 4.03, 44, 150, 44, 8, "lens of four elements of goptical"),
]
write(__file__, [case(index, *setup) for index, setup in enumerate(setups, 1)])
