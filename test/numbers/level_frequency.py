"""Random cases of level and frequency quantities, computed with scipy by other routes than the add-in takes.

Prints one JSON list of {kind, inputs, expected, relative} on standard output. Seeded: the same cases every time.
SI units, fractions of 1, frequencies in Hz.
"""

import json
import sys

import numpy as np
from scipy import signal, stats
from scipy.integrate import quad, solve_ivp
from scipy.linalg import eigh
from scipy.optimize import brentq

random = np.random.default_rng(20260704)
cases = []


def add(kind, inputs, expected, relative):
    cases.append({"kind": kind, "inputs": inputs, "expected": float(expected), "relative": relative})


def log_uniform(low, high):
    return float(np.exp(random.uniform(np.log(low), np.log(high))))


def random_table(points, with_step):
    x = np.sort([log_uniform(1, 5000) for _ in range(points)])
    y = np.array([log_uniform(0.01, 100) for _ in range(points)])
    if with_step:
        at = int(random.integers(1, points - 1))
        x = np.insert(x, at, x[at])
        y = np.insert(y, at, log_uniform(0.01, 100))
    return x, y


def integrate(value, edges):
    """Adaptive quadrature in ln f between neighbouring edges, which hold every corner of the integrand."""
    total = 0.0
    for low, high in zip(edges[:-1], edges[1:]):
        if high > low:
            inner = lambda u: value(np.exp(u), low, high) * np.exp(u)
            total += quad(inner, np.log(low), np.log(high), epsabs=0, epsrel=1e-12, limit=200)[0]
    return total


# Area under straight lines on log-log axes, inside the table.
for number in range(25):
    x, y = random_table(int(random.integers(2, 7)) + 2, number % 3 == 0)
    low, high = sorted([log_uniform(x[0], x[-1]), log_uniform(x[0], x[-1])])

    def inside(f, left, right):
        middle = np.sqrt(left * right)
        at = int(np.searchsorted(x, middle)) - 1
        return np.exp(np.interp(np.log(f), np.log(x[at : at + 2]), np.log(y[at : at + 2])))

    edges = [low, *[v for v in np.unique(x) if low < v < high], high]
    add("table area", {"x": list(x), "y": list(y), "low": low, "high": high}, integrate(inside, edges), 1e-9)

# Noise of a density table in a band that leaves the table at both ends.
for number in range(25):
    x, y = random_table(int(random.integers(2, 6)), False)
    low, high = x[0] / log_uniform(1, 20), x[-1] * log_uniform(1, 20)
    first = min(0.0, float(np.diff(np.log(y[:2]))[0] / np.diff(np.log(x[:2]))[0]))
    if first < -3:
        low = x[0] / 1.5

    def squared(f, _left, _right):
        if f < x[0]:
            return (y[0] * (f / x[0]) ** first) ** 2
        return float(np.exp(np.interp(np.log(f), np.log(x), np.log(y)))) ** 2

    total = integrate(squared, [low, *x, high])
    add("band noise", {"x": list(x), "y": list(y), "low": low, "high": high}, np.sqrt(total), 1e-9)


def transfer(f, poles, resonance, quality):
    """Complex response as a product of the blocks."""
    s = 1j * np.asarray(f, dtype=float)
    h = np.ones_like(s)
    for corner in poles:
        h = h * s / (s + corner)
    x = s / resonance
    return np.abs(h / (1 + x / quality + x * x))


# Span: first crossing on a dense grid outward from the reference, refined by Brent's method.
for number in range(40):
    count = int(random.integers(0, 4))
    top = 10 if number % 2 == 0 else 3000
    poles = [log_uniform(0.05, top) for _ in range(count)]
    resonance, quality = log_uniform(1000, 60000), log_uniform(0.4, 60)
    reference, tolerance = log_uniform(20, 500), float(random.uniform(0.01, 0.3))
    ratio = lambda f: float(transfer(f, poles, resonance, quality) / transfer(reference, poles, resonance, quality))
    query = {
        "lowPoles": poles,
        "resonance": resonance,
        "qualityFactor": quality,
        "reference": reference,
        "tolerance": tolerance,
    }
    for end, far in (("low", reference * 1e-6), ("high", resonance * 50)):
        grid = np.geomspace(reference, far, 40001)
        deviation = transfer(grid, poles, resonance, quality) / transfer(reference, poles, resonance, quality) - 1
        out = np.flatnonzero(np.abs(deviation) > tolerance)
        if len(out) == 0:
            if end == "high":
                sys.exit("a response without an upper end")
            add("span low", query, 0.0, 0)
            continue
        before, after = grid[out[0] - 1], grid[out[0]]
        sign = np.sign(deviation[out[0]])
        edge = brentq(lambda f: ratio(f) - 1 - sign * tolerance, *sorted((before, after)), xtol=1e-13, rtol=1e-14)
        add(f"span {end}", query, edge, 1e-9)

# Cascade of high-pass poles.
for number in range(10):
    poles = [log_uniform(0.01, 10) for _ in range(int(random.integers(1, 6)))]
    loss = float(random.uniform(0.01, 0.5))
    amplitude = lambda f: float(transfer(f, poles, 1e15, 1.0)) - (1 - loss)
    add("poles limit", {"corners": poles, "loss": loss}, brentq(amplitude, 1e-6, 1e6, xtol=1e-14, rtol=1e-14), 1e-9)

# Half-sine through one high-pass pole: time simulation, exact for the straight lines between samples.
SAMPLES = 10000
# Error of drawing a half-sine by straight lines is (π/SAMPLES)²/8; the rest is the sampled maximum.
for number in range(12):
    ratio = log_uniform(0.3, 100)
    t = np.linspace(0, 1, SAMPLES + 1)
    _, y, _ = signal.lsim(([ratio, 0], [ratio, 1]), np.sin(np.pi * t), t)
    add("pulse peak", {"ratio": ratio}, y.max(), 1e-7)
    add("pulse undershoot", {"ratio": ratio}, y[-1], 1e-6)
    add("pulse velocity", {"ratio": ratio}, np.trapezoid(y, t) / (2 / np.pi), 1e-7)

# Half-sine through a second-order sensor, watched until well after the pulse.
for number in range(20):
    product, quality = log_uniform(0.4, 25), log_uniform(0.55, 200)
    turns = 3
    t = np.arange(0, 1 + turns / product, 1 / SAMPLES)
    drive = np.where(t <= 1, np.sin(np.pi * t), 0)
    w = 2 * np.pi * product
    _, y, _ = signal.lsim(([w * w], [1, w / quality, w * w]), drive, t)
    add("pulse overshoot", {"product": product, "quality": quality}, y.max(), 1e-5)

# Settling: integrate the decay and let the solver find the time of the residue.
for number in range(10):
    corner, step = log_uniform(0.01, 10), log_uniform(1, 24)
    residue = step * log_uniform(1e-6, 0.5)
    reached = lambda _t, y: np.log(y[0] / residue)
    reached.terminal = True
    decay = solve_ivp(
        lambda _t, y: -2 * np.pi * corner * y, [0, 1e4], [step], events=reached, rtol=1e-11, atol=1e-14, method="DOP853"
    )
    add("settling", {"corner": corner, "step": step, "residue": residue}, decay.t_events[0][0], 1e-6)

# Two bodies: generalised eigenvalues of stiffness and mass matrix.
for number in range(10):
    base, seismic = log_uniform(0.1, 50) / 1000, log_uniform(0.05, 10) / 1000
    own, stiffness = log_uniform(1000, 80000), log_uniform(1e5, 1e10)
    spring = seismic * (2 * np.pi * own) ** 2
    values = eigh([[stiffness + spring, -spring], [-spring, spring]], np.diag([base, seismic]), eigvals_only=True)
    query = {"base": base, "seismic": seismic, "resonance": own, "stiffness": stiffness}
    add("two bodies", query, np.sqrt(values[0]) / (2 * np.pi), 1e-6)

# Gaussian share outside k sigma.
for number in range(10):
    k = float(random.uniform(0.05, 8))
    add("share outside", {"k": k}, 2 * stats.norm.sf(k), 1e-10)

json.dump(cases, sys.stdout)
