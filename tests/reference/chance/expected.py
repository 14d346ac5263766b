"""Prints the values of the row erf-scipy: python3 expected.py, with the scipy that the row names."""

import scipy.special

for x in [1e-12, 0.05, 0.25, 0.75, 1.25, 1.75, 1.999, 2, 2.001, 2.5, 3.25, 4, 5, 5.9, -0.7, -3]:
    print(x, repr(float(scipy.special.erf(x))))
