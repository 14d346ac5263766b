"""Expected values of cases.json: density and drift of even marks in made-up profiles, by a general least-squares routine.

Run: python3 expected.py   (Python 3, numpy and scipy as named in the rows), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import numpy as np
import scipy
from scipy.optimize import least_squares

from rows import printed, row, write

fitted = f"scipy {scipy.__version__}, optimize.least_squares (trust region, numerical derivatives), run here"
spectrum = f"numpy {np.__version__}, fft.rfft of the profile padded to 2^20 samples, run here"


def marks(cycles, drift, count):
    s = np.linspace(-0.5, 0.5, count)
    return cycles * s / (1 + drift * s)


def profile(cycles, drift, count, noise, seed):
    """Dark lines, 0.2 of their spacing wide and a little soft, in normal noise; to four decimals."""
    turn = 2 * np.pi * (marks(cycles, drift, count) + 0.37)
    lines = sum(np.sin(0.2 * np.pi * h) / (np.pi * h) * 2 * np.exp(-((0.4 * h) ** 2)) * np.cos(h * turn) for h in (1, 2, 3, 4))
    rng = np.random.default_rng(seed)
    return np.round(0.7 - 0.5 * lines + noise * rng.standard_normal(count), 4)


def by_least_squares(light, cycles, drift):
    """Level, slope, and three harmonics of one strength all along: all ten numbers at once."""
    count = len(light)
    s = np.linspace(-0.5, 0.5, count)

    def model(p):
        turn = 2 * np.pi * marks(p[0], p[1], count)
        waves = sum(p[4 + 2 * h] * np.cos((h + 1) * turn) + p[5 + 2 * h] * np.sin((h + 1) * turn) for h in range(3))
        return p[2] + p[3] * s + waves

    start = np.concatenate([[cycles, drift, light.mean(), 0], [-0.1, 0.1] * 3])
    found = least_squares(lambda p: model(p) - light, start, x_scale="jac", xtol=1e-15, ftol=1e-15, gtol=1e-15)
    variance = 2 * found.cost / (count - len(start))
    covariance = variance * np.linalg.inv(found.jac.T @ found.jac)
    return found.x[0], found.x[1], np.sqrt(covariance[0, 0])


def by_spectrum(light):
    """Marks along the whole line at the tallest bin."""
    padded = np.abs(np.fft.rfft((light - light.mean()) * np.hanning(len(light)), 2**20))
    return (len(light) - 1) * padded.argmax() / 2**20


rows = []
plans = [(31.3, 0.0, 320, 0.02, 1), (40.7, -0.05, 400, 0.05, 2), (25.2, 0.12, 360, 0.03, 3), (60.1, 0.0, 360, 0.1, 4)]
for cycles, drift, count, noise, seed in plans:
    light = profile(cycles, drift, count, noise, seed)
    n, gamma, error = by_least_squares(light, cycles, drift)
    inputs = {"light": [float(one) for one in light]}
    title = f"{cycles} marks along {count} samples, with a drift of {drift} and noise of {noise}"
    expected = {"cycles": printed(n), "drift": printed(gamma), "error": printed(error)}
    tolerance = {"cycles": float(f"{1.5 * error:.2g}"), "drift": float(f"{6 * error / cycles:.2g}"), "error": {"relative": 0.5}}
    because = "strengths that may change along the line, and errors that may hang together, cost a part of a standard error; a standard error is itself known to a third"
    rows.append(row(f"even-marks-{seed}", title, fitted, inputs, expected, tolerance, because))
    if drift == 0:
        because = "the tallest bin of a noisy spectrum lies within three standard errors of the marks"
        rows.append(row(f"even-spectrum-{seed}", f"{title}: by its spectrum", spectrum, inputs, {"cycles": printed(by_spectrum(light))}, float(f"{3 * error + 0.02:.2g}"), because))
write(__file__, rows)
