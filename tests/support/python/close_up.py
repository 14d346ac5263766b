"""A close-up lens on a lens of two glasses, by ray-transfer matrices, and what a row of cases.json says of it."""
from sympy import Abs, Rational, diff
from sympy.physics.optics import ThinLens

from chain import effective_f_number, image_side, lenses, magnification, subject_side, through, x
from rows import printed


class CloseUp:
    """The lens *name* focused on a point *ahead* of its front glass, None at infinity, then one of so many dioptres *gap* before it."""

    def __init__(self, name, gap, power, abbe, ahead):
        self.name, self.gap, self.power, self.abbe, self.ahead = name, gap, power, abbe, ahead
        self.lens = lens = lenses[name]
        # The sensor stays where the focused lens has its image; at infinity that is the back focus.
        self.sensor = lens.back_focus if ahead is None else image_side(lens.glass, ahead)
        self.alone = 0 if ahead is None else magnification(lens.glass, ahead, self.sensor)
        close_up = ThinLens(Rational(1000) / power)
        chain = [close_up, gap, *lens.glass]
        self.working = subject_side(chain, self.sensor)
        self.magnification = magnification(chain, self.working, self.sensor)
        self.cone = effective_f_number([close_up, gap, *lens.to_stop], lens.from_stop, lens.hole, self.working, self.sensor)
        # Its power as a letter, to be taken the derivative by.
        self.coloured = ThinLens(Rational(1000) / x)
        plane = through(self.coloured, gap, *lens.glass, self.sensor)
        self.spread = self.by_colour(-plane.B / plane.A)

    def by_colour(self, length):
        """How much a length changes from red to blue: the power differs by one Abbe-numberth, and it begins to change as the power does."""
        return Abs(diff(length, x).subs(x, self.power)) * self.power / self.abbe

    def inputs(self):
        """What a row gives the core."""
        lens = self.lens
        return {
            "abbeNumber": self.abbe,
            "closeUpPower": printed(self.power, "dpt"),
            "focalLength": printed(lens.focal_length, "mm"),
            "focusMagnification": printed(self.alone),
            "fNumber": printed(lens.f_number),
            "pupilMagnification": printed(lens.pupil_magnification),
            "closeUpGap": printed(self.gap + lens.front_principal_depth, "mm"),
        }

    def expected(self):
        """What it expects back, whatever else it asks. A lens at infinity has short rules of its own, which say the same."""
        size, room = printed(self.magnification), printed(self.working, "mm")
        short = {"magnificationByShortRule": size, "workingDistanceByShortRule": room} if self.ahead is None else {}
        return {
            "magnification": size,
            "workingDistance": room,
            **short,
            "effectiveFNumber": printed(self.cone),
            "colourSpread": printed(self.spread, "mm"),
        }

    def where(self):
        """How the lens stands, for a title."""
        return "at infinity" if self.ahead is None else f"focused {self.ahead} mm ahead of its front glass"
