"""Expected values of cases.json: white light through a round pupil, by direct quadrature over the whole 10 nm table.

Run: python3 expected.py   (Python 3, numpy, scipy 1.17.1)
"""
import numpy as np
from scipy.integrate import quad
from scipy.special import j0, j1

# CIE 1924 photopic luminous efficiency, 380 to 780 nm.
V = np.array([
    0.000039, 0.00012, 0.000396, 0.00121, 0.004, 0.0116, 0.023, 0.038, 0.06, 0.09098, 0.13902, 0.20802, 0.323, 0.503,
    0.71, 0.862, 0.954, 0.9949501, 0.995, 0.952, 0.87, 0.757, 0.631, 0.503, 0.381, 0.265, 0.175, 0.107, 0.061, 0.032,
    0.017, 0.00821, 0.004102, 0.002091, 0.001047, 0.00052, 0.0002492, 0.00012, 0.00006, 0.00003, 0.00001499,
])
wavelengths = np.arange(380, 781, 10) * 1e-6
weights = V / V.sum()


def transfer(s, waves):
    """Transfer of a round pupil with defocus: the overlap of two shifted pupils, strip by strip."""
    if s >= 1:
        return 0.0
    strip = lambda x: np.sqrt(max(0.0, 1 - (x + s) ** 2)) * np.cos(8 * np.pi * waves * s * x)
    return 4 / np.pi * quad(strip, 0, 1 - s, limit=400, epsabs=1e-11)[0]


def white(of):
    return sum(w * of(l) for w, l in zip(weights, wavelengths))


for f_number, waves, frequencies in [(16, 0, [10, 50, 80, 100]), (16, 1, [10, 20, 30, 50]), (8, 3, [5, 10, 20, 40])]:
    print(f_number, waves, [round(float(white(lambda l: transfer(v * l * f_number, waves * 0.000555 / l))), 6) for v in frequencies])

v = lambda r, l: np.pi * r / (l * 16)
radii = [0.002, 0.005, 0.01, 0.02]
peak = white(lambda l: l**-2)
print([round(float(white(lambda l: l**-2 * (2 * j1(v(r, l)) / v(r, l)) ** 2) / peak), 6) for r in radii])
print([round(float(white(lambda l: 1 - j0(v(r, l)) ** 2 - j1(v(r, l)) ** 2)), 6) for r in radii])
print('mean wavelength', white(lambda l: l))
