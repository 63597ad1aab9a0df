"""Seeded random cases for mass loading, thermal bands and uncertainty, solved by numpy and scipy by other routes.

Prints one JSON object: for each kind a list of {"given": ..., "expected": ...}.
"""
import json
import sys

import numpy as np
from scipy.integrate import quad
from scipy.linalg import eigh
from scipy.optimize import brentq
from scipy.special import i0, i1, j0, j1
from scipy.stats import t as student

rng = np.random.default_rng(20260)
PI = np.pi


def chain():
    """A fixed-free chain: full matrices with the mass added, and the free modes at the loaded point."""
    n = int(rng.integers(2, 7))
    masses = rng.uniform(0.2, 3, n)
    springs = rng.uniform(1e5, 5e6, n)
    stiffness = np.diag(springs + np.append(springs[1:], 0))
    stiffness -= np.diag(springs[1:], 1) + np.diag(springs[1:], -1)
    point = int(rng.integers(0, n))
    values, shapes = eigh(stiffness, np.diag(masses))
    modes = [
        {"frequency": float(np.sqrt(v) / 2 / PI), "modalMass": 1.0, "shape": float(s)}
        for v, s in zip(values, shapes[point])
    ]
    return n, masses, stiffness, point, modes


def loaded_chain():
    n, masses, stiffness, point, modes = chain()
    added = float(rng.uniform(0.01, 1.5))
    loaded = masses.copy()
    loaded[point] += added
    values = eigh(stiffness, np.diag(loaded), eigvals_only=True)
    return {"modes": modes, "added": added}, [float(f) for f in np.sqrt(values) / 2 / PI]


def receptance():
    n, masses, stiffness, point, modes = chain()
    added = float(rng.uniform(0.01, 1.0))
    damping = float(rng.uniform(0.001, 0.05))
    frequency = float(rng.uniform(0.2, 1.5) * modes[int(rng.integers(0, n))]["frequency"])
    omega2 = (2 * PI * frequency) ** 2
    complex_stiffness = stiffness * (1 + 2j * damping)
    free = -omega2 * np.linalg.inv(complex_stiffness - omega2 * np.diag(masses))
    loaded_masses = masses.copy()
    loaded_masses[point] += added
    loaded = -omega2 * np.linalg.inv(complex_stiffness - omega2 * np.diag(loaded_masses))
    other = int(rng.integers(0, n))
    pair = lambda z: [float(z.real), float(z.imag)]
    return (
        {
            "modes": modes,
            "added": added,
            "damping": damping,
            "frequency": frequency,
            "transfer": pair(free[other, point]),
            "crossed": pair(free[other, 0]),
            "fromMass": pair(free[point, 0]),
        },
        {
            "free": pair(free[point, point]),
            "loaded": pair(loaded[point, point]),
            "loadedTransfer": pair(loaded[other, point]),
            "loadedCrossed": pair(loaded[other, 0]),
        },
    )


def tip_mass():
    share = float(10 ** rng.uniform(-3, 1))
    free = brentq(lambda x: 1 + np.cosh(x) * np.cos(x), 1, 2.5, xtol=1e-14)
    loaded = brentq(
        lambda x: 1 + np.cosh(x) * np.cos(x) + share * x * (np.sinh(x) * np.cos(x) - np.cosh(x) * np.sin(x)),
        1e-3,
        2.5,
        xtol=1e-14,
    )
    return {"beam": "cantilever, mass at the tip", "share": share}, (loaded / free) ** 2


def mid_span_mass():
    """Determinant of the four end conditions of half the beam."""
    share = float(10 ** rng.uniform(-3, 1))

    def determinant(x):
        half = x / 2
        # w = A sin + B sinh of the pinned half; slope 0 and 2 EI w''' + m w^2 w = 0 at the middle
        return np.linalg.det(
            [
                [np.cos(half), np.cosh(half)],
                [-2 * np.cos(half) + share * x * np.sin(half), 2 * np.cosh(half) + share * x * np.sinh(half)],
            ]
        )

    loaded = brentq(determinant, 1e-2, PI + 1e-6, xtol=1e-14)
    return {"beam": "simply supported beam, mass at mid-span", "share": share}, (loaded / PI) ** 2


ENDS = {"cantilever": (2, 3), "clamped beam": (0, 1), "clamped-pinned beam": (0, 2), "free beam": (2, 3)}


def beam_mode():
    """Shape from the null space of the end conditions, mean square by quadrature."""
    name = str(rng.choice(list(ENDS)))
    mode = int(rng.integers(1, 5))
    start = 2 if name == "free beam" else 0

    def derivative(order, x):
        c, s, ch, sh = np.cos(x), np.sin(x), np.cosh(x), np.sinh(x)
        return np.array([[c, s, ch, sh], [-s, c, sh, ch], [-c, -s, ch, sh], [s, -c, sh, ch]][order])

    def conditions(x):
        rows = [derivative(start, 0), derivative(start + 1, 0), *(derivative(o, x) for o in ENDS[name])]
        return np.array(rows)

    grid = np.linspace(0.5, (mode + 1.5) * PI, 4000)
    signs = np.sign([np.linalg.det(conditions(x)) for x in grid])
    change = np.nonzero(np.diff(signs))[0][mode - 1]
    root = brentq(lambda x: np.linalg.det(conditions(x)), grid[change], grid[change + 1], xtol=1e-13)
    shape = np.linalg.svd(conditions(root))[2][-1]
    motion = lambda position: float(derivative(0, root * position) @ shape)
    mean = quad(lambda x: motion(x) ** 2, 0, 1, limit=200, epsabs=1e-13, epsrel=1e-11)[0]
    position = float(rng.uniform(0.05, 1.0))
    return {"beam": name, "mode": mode, "position": position}, [root, mean, motion(position)]


def circular_plate():
    mode = int(rng.integers(1, 6))
    radius = float(rng.uniform(0, 0.6))
    root = brentq(lambda x: j0(x) * i1(x) + i0(x) * j1(x), (mode - 0.3) * PI, (mode + 0.5) * PI, xtol=1e-14)
    shape = lambda r: j0(root * r) - j0(root) / i0(root) * i0(root * r)
    mean = quad(lambda r: 2 * r * shape(r) ** 2, 0, 1, limit=200, epsabs=1e-13, epsrel=1e-11)[0]
    return {"mode": mode, "radius": radius}, [root, mean, float(shape(radius))]


def band():
    """Dense grid with numpy.interp; knots are on the grid, so nothing between is missed."""
    knots = np.unique(np.round(rng.uniform(-60, 200, int(rng.integers(3, 9))), 1))
    knots = np.concatenate([[-60.0], knots[(knots > -60) & (knots < 200)], [200.0]])
    deviations = np.round(rng.uniform(-0.12, 0.12, len(knots)), 5)
    low, high = sorted(float(v) for v in np.round(rng.uniform(-60, 200, 2), 1))
    calibration = float(np.round(rng.uniform(-20, 60), 1))
    grid = np.unique(np.concatenate([np.linspace(low, high, 20001), knots[(knots >= low) & (knots <= high)]]))
    relative = (1 + np.interp(grid, knots, deviations)) / (1 + np.interp(calibration, knots, deviations)) - 1
    smallest, largest = float(relative.min()), float(relative.max())
    middle = (2 + smallest + largest) / 2
    half = max(abs((1 + smallest) / middle - 1), abs((1 + largest) / middle - 1))
    given = {"x": knots.tolist(), "y": deviations.tolist(), "low": low, "high": high, "calibration": calibration}
    return given, {"low": smallest, "high": largest, "half": float(half)}


def window():
    given, _ = band()
    tolerance = float(rng.uniform(0.005, 0.1))
    calibration = given["calibration"]
    zero = 1 + np.interp(calibration, given["x"], given["y"])
    excess = lambda t: abs((1 + np.interp(t, given["x"], given["y"])) / zero - 1) - tolerance

    def exit_towards(end):
        knots = sorted((t for t in given["x"] if min(calibration, end) < t < max(calibration, end)), reverse=end < calibration)
        path = [calibration, *knots, end]
        for a, b in zip(path, path[1:]):
            if excess(b) > 0:
                return brentq(excess, min(a, b), max(a, b), xtol=1e-12)
        return end

    return {**given, "tolerance": tolerance}, [exit_towards(-60.0), exit_towards(200.0)]


def freedom():
    """Welch and Satterthwaite from the definition: twice the squared mean over the variance of the summed variances."""
    n = int(rng.integers(2, 9))
    standards = rng.uniform(0.001, 0.05, n)
    freedoms = rng.integers(2, 60, n).astype(float)
    variances = standards**2
    variance_of_sum = np.sum(2 * variances**2 / freedoms)
    return (
        {"standards": standards.tolist(), "freedoms": freedoms.tolist()},
        {"combined": float(np.linalg.norm(standards)), "freedom": float(2 * variances.sum() ** 2 / variance_of_sum)},
    )


def coverage():
    degrees = float(10 ** rng.uniform(0, 3))
    probability = float(rng.uniform(0.5, 0.999))
    return {"freedom": degrees, "probability": probability}, float(student.ppf((1 + probability) / 2, degrees))


KINDS = {
    "loadedChain": (loaded_chain, 40),
    "receptance": (receptance, 40),
    "tipMass": (tip_mass, 20),
    "midSpanMass": (mid_span_mass, 20),
    "beamMode": (beam_mode, 24),
    "circularPlate": (circular_plate, 10),
    "band": (band, 60),
    "window": (window, 40),
    "freedom": (freedom, 20),
    "coverage": (coverage, 30),
}

json.dump(
    {kind: [dict(zip(("given", "expected"), make())) for _ in range(count)] for kind, (make, count) in KINDS.items()},
    sys.stdout,
)
