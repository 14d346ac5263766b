"""Lenses and what is mounted on them as ray-transfer matrices of sympy's `physics.optics.gaussopt`, in exact fractions.

A lens is two thin lenses with a stop between them, which has principal planes apart and pupils of unlike size, as real
lenses have. Lengths in mm. Everything that a row expects is read off the product of such matrices.
"""
from sympy import Rational, solve, symbols
from sympy.physics.optics import FreeSpace, RayTransferMatrix, ThinLens

x = symbols("x")
identity = RayTransferMatrix(1, 0, 0, 1)


def through(*elements):
    """The matrix of elements met in this order: distances as numbers, the rest as matrices."""
    product = identity
    for element in elements:
        product = (element if isinstance(element, RayTransferMatrix) else FreeSpace(element)) * product
    return product


def only(equation):
    """The one root of an equation in x."""
    (root,) = solve(equation, x)
    return root


class Lens:
    """Two thin lenses of focal lengths *front* and *back*, *apart*, with a stop *stop* behind the front one, *hole* wide."""

    def __init__(self, front, back, apart, stop, hole):
        self.front, self.back = ThinLens(Rational(front)), ThinLens(Rational(back))
        self.apart, self.stop, self.hole = Rational(apart), Rational(stop), Rational(hole)
        self.glass = [self.front, self.apart, self.back]
        self.to_stop, self.from_stop = [self.front, self.stop], [self.apart - self.stop, self.back]
        whole = through(*self.glass)
        self.focal_length = -1 / whole.C
        # From the front lens back to H, and from the back lens on to H'.
        self.front_principal_depth = (whole.D - 1) / whole.C
        self.back_principal = (1 - whole.A) / whole.C
        self.principal_separation = self.apart + self.back_principal - self.front_principal_depth
        self.back_focus = self.back_principal + self.focal_length
        # The point whose image in the stop's space is the stop: behind the front lens, so not in front by x.
        self.entrance_depth = -only(through(x, *self.to_stop).B)
        self.entrance_pupil = self.hole / through(-self.entrance_depth, *self.to_stop).A
        self.exit_beyond = only(through(*self.from_stop, x).B)
        self.exit_pupil = self.hole * through(*self.from_stop, self.exit_beyond).A
        self.pupil_magnification = self.exit_pupil / self.entrance_pupil
        self.f_number = self.focal_length / self.entrance_pupil

    def reversed_glass(self):
        return [self.back, self.apart, self.front]


def image_side(elements, ahead):
    """How far behind the last element the image stands of a point *ahead* of the first."""
    return only(through(ahead, *elements, x).B)


def subject_side(elements, behind):
    """How far ahead of the first element the point stands whose image is *behind* the last."""
    return only(through(x, *elements, behind).B)


def magnification(elements, ahead, behind):
    """Without its sign: the picture is upside down."""
    return -through(ahead, *elements, behind).A


def effective_f_number(to_stop, from_stop, hole, ahead, behind):
    """Of the cone behind the last element that the stop lets pass from a point on the axis."""
    slope = (hole / 2) / through(ahead, *to_stop).B
    return 1 / abs(2 * through(ahead, *to_stop, *from_stop, behind).D * slope)


# Front, back, apart, stop from the front lens, hole: nearly symmetric; retrofocus; telephoto; a short wide one.
lenses = {
    "nearly symmetric": Lens(90, 100, 20, 9, 10),
    "retrofocus": Lens(-80, 45, 40, 34, 8),
    "telephoto": Lens(80, -70, 40, 30, 7),
    "short": Lens(-60, 28, 25, 20, 6),
}
