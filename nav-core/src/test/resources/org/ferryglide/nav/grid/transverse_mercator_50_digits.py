"""Prints the rows of transverse-mercator-50-digits.csv; needs mpmath.

The projection by its definition, without any series: with psi the isometric latitude, the complex
latitude phi_c solves  psi(phi_c) = psi(phi) + i lambda,  and northing + i easting is the meridian
distance of phi_c. Convergence and scale follow from the derivative of that distance.
"""
import math
import random

from mpmath import asinh, atanh, arg, cos, degrees, im, linspace, mp, mpc, mpf, nint, pi, quad
from mpmath import atan, radians, re, sign, sin, sqrt, tan, tanh

mp.dps = 50
A = mpf(6378137)
F = 1 / mpf("298.257223563")
E2 = F * (2 - F)
E = sqrt(E2)
K0 = mpf(0.9996)  # the double


def meridian(end):
    """Meridian distance to a complex latitude, along a straight path."""
    return A * (1 - E2) * end * quad(
        lambda t: (1 - E2 * sin(end * t) ** 2) ** mpf(-1.5), linspace(0, 1, 4))


def project(lat, lam):
    phi = radians(lat)
    target = mpc(asinh(tan(phi)) - E * atanh(E * sin(phi)), radians(lam))
    p = 2 * atan(tanh(target / 2))  # the sphere's answer to begin with
    for _ in range(60):  # Newton
        s, c = sin(p), cos(p)
        miss = asinh(tan(p)) - E * atanh(E * s) - target
        if abs(im(miss)) > 1:
            miss -= mpc(0, pi) * nint(im(miss) / pi)
        step = miss * (1 - E2 * s * s) * c / (1 - E2)
        p -= step
        if abs(step) < mpf(10) ** -48:
            break
    m = meridian(p)
    derivative = A * cos(p) / sqrt(1 - E2 * sin(p) ** 2)
    parallel = A * cos(phi) / sqrt(1 - E2 * sin(phi) ** 2)
    return K0 * im(m), K0 * re(m), -degrees(arg(derivative)), K0 * abs(derivative) / parallel


def row(kind, lat, lam):
    far = abs(lam) > 90  # the plane goes on over the pole: mirrored in the meridian at 90 degrees
    x, y, g, k = project(mpf(lat), (180 - abs(mpf(lam))) * sign(lam) if far else mpf(lam))
    if far:
        side = 1 if lat >= 0 else -1
        y = 2 * K0 * re(meridian(pi / 2)) * side - y
        g = 180 * side * sign(lam) - g
    print(kind, repr(lat), repr(lam), fixed(x, 12), fixed(y, 12), fixed(g, 16), fixed(k, 17), sep=",")


def fixed(value, decimals):
    scaled = int(nint(value * mpf(10) ** decimals))
    digits = str(abs(scaled)).rjust(decimals + 1, "0")
    return ("-" if scaled < 0 else "") + digits[:-decimals] + "." + digits[-decimals:]


random.seed(20261124)
uniform = random.uniform
for _ in range(80):
    row("zone", round(uniform(-84, 84), 7), round(uniform(-3, 3), 7))
for _ in range(40):
    row("wide zone", round(uniform(56, 84), 7), round(uniform(-9, 9), 7))
for _ in range(60):
    while True:
        lat, lam = round(uniform(-89.9, 89.9), 6), round(uniform(-35, 35), 6)
        if math.asin(abs(math.cos(math.radians(lat)) * math.sin(math.radians(lam)))) < math.radians(35):
            break
    row("within 3900 km", lat, lam)
for _ in range(40):
    while True:
        lat = round(uniform(50, 89.99), 6) * random.choice([-1, 1])
        lam = round(uniform(-179, 179), 5)
        sine = abs(math.cos(math.radians(lat)) * math.sin(math.radians(lam)))
        if sine < math.sin(math.radians(34.5)) and abs(abs(lam) - 90) > 1e-3:
            break
    row("far side", lat, lam)
for _ in range(20):
    row("near the origin", round(uniform(-1e-4, 1e-4), 12), round(uniform(-1e-4, 1e-4), 12))
for _ in range(15):
    row("near a pole", round(90 - 10 ** uniform(-9, -1), 11), round(uniform(-180, 180), 4))
for _ in range(15):
    row("equator", 0.0, round(uniform(-34, 34), 6))
for _ in range(10):
    row("meridian", round(uniform(-89, 89), 7), 0.0)
