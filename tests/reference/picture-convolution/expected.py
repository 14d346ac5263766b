"""Expected values of cases.json: transforms by numpy, and a defocused, averaged picture by quadrature and scipy's convolution.

Run: python3 expected.py   (Python 3, numpy 2.4.6, scipy 1.17.1)

The picture is made by another route than the core's. The point's image is integrated from the pupil (Hankel integral by
quadrature), averaged over the pixel's square on a grid fifteen times as fine, and convolved with the scene directly; the core
multiplies the scene's transform by the pupil's autocorrelation.
"""
import json
import numpy as np
from scipy.integrate import quad_vec
from scipy.signal import fftconvolve
from scipy.special import j0


def dotted(columns, rows):
    """The scene of ours.ts: a pseudo-random dot in every fifth place of the middle, nothing between and around."""
    k = np.arange(columns * rows).reshape(rows, columns)
    y, x = np.divmod(k, columns)
    middle = (abs(x - columns // 2) <= 30) & (abs(y - rows // 2) <= 30)
    return np.where(middle & (x % 5 == 2) & (y % 5 == 2), ((k * 7919) % 101) / 101, 0.0)


def signal(n):
    k = np.arange(n)
    return ((k * 37) % 101) / 101 + 1j * ((k * 53) % 97) / 97


def picture(waves, wavelength, f_number, pitch, side):
    fine, half = 15, 60
    radii = np.linspace(0, half * pitch * 1.5, 6001)
    v = np.pi * radii / (wavelength * f_number)
    amplitude, _ = quad_vec(lambda rho: 2 * np.exp(2j * np.pi * waves * rho**2) * j0(v * rho) * rho, 0, 1, epsabs=1e-10, limit=2000)
    intensity = np.abs(amplitude) ** 2 * np.pi / (4 * (wavelength * f_number) ** 2)  # integrates to one over the sensor
    place = (np.arange(-half * fine - fine // 2, half * fine + fine // 2 + 1)) * pitch / fine
    spread = np.interp(np.hypot(place[:, None], place[None, :]), radii, intensity)
    pixels = spread.reshape(2 * half + 1, fine, 2 * half + 1, fine).mean(axis=(1, 3)) * pitch**2
    return fftconvolve(dotted(side, side), pixels, mode='same')


for n in (60, 768):
    transformed = np.fft.fft(signal(n))
    bins = [0, 1, 7, n // 2, n - 1]
    print(n, [round(float(t.real), 6) for t in transformed[bins]], [round(float(t.imag), 6) for t in transformed[bins]])

for waves in (0, 0.5, 1.7):
    side = 181
    seen = picture(waves, 0.00055, 16, 0.003, side)
    places = [(90, 90), (92, 92), (87, 90), (75, 101), (110, 82)]
    print(waves, json.dumps([round(float(seen[row, column]), 7) for column, row in places]))
