"""Expected values of the row mtf-scipy: the overlap of two round pupils, by quadrature.

Run: python3 expected.py   (Python 3, numpy, scipy 1.17.1); prints the values.
"""
from math import pi, sqrt

from scipy.integrate import quad

for share in (0.05, 0.25, 0.45, 0.65, 0.85, 0.95):
    # Two discs of radius 1, their middles 2 x share apart: half the lens that both cover, from its middle to its tip.
    half, _ = quad(lambda x: 2 * sqrt(1 - x * x), share, 1, epsabs=1e-12, epsrel=1e-12)
    print(share, repr(2 * half / pi))
