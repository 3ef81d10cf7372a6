"""The energy engine's method in NumPy, vectorised over time for the sun and over years for the battery, which goes step by step.

Arguments: file of numbers (doubles): latitude, twelve Wh/m2, twelve air C, then years x 365 shares of a clear sky. Prints one JSON object."""
import json, sys, time
import numpy as np

data = np.fromfile(sys.argv[1], dtype=np.float64)
latitude, sun_wh, air = np.radians(data[0]), data[1:13], data[13:25]
years = data[25:].reshape(-1, 365)
MONTH_DAYS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
MONTH = np.repeat(np.arange(12), MONTH_DAYS)
PEAK, MOST, EFFICIENCY, LOAD, NEW, RESERVE = 400.0, 1e9, 0.95, 45.0, 5000.0, 0.3
COULOMBIC, ENERGY = 0.99, 0.94
OUT = np.sqrt(ENERGY / COULOMBIC)
IN = COULOMBIC * OUT


def path():
    t = (2460676.5 + np.arange(366) - 2451545) / 36525
    mean, anomaly = 280.46646 + t * (36000.76983 + 0.0003032 * t), np.radians(357.52911 + t * (35999.05029 - 0.0001537 * t))
    e = 0.016708634 - t * (0.000042037 + 0.0000001267 * t)
    centre = (1.914602 - t * (0.004817 + 0.000014 * t)) * np.sin(anomaly) + (0.019993 - 0.000101 * t) * np.sin(2 * anomaly) + 0.000289 * np.sin(3 * anomaly)
    distance = 1.000001018 * (1 - e * e) / (1 + e * np.cos(anomaly + np.radians(centre)))
    node = np.radians(125.04 - 1934.136 * t)
    longitude = np.radians(mean + centre - 0.00569 - 0.00478 * np.sin(node))
    obliquity = np.radians(23.439291 - t * (0.0130042 + t * (0.00000016 - 0.000000504 * t)) + 0.00256 * np.cos(node))
    declination = np.arcsin(np.sin(obliquity) * np.sin(longitude))
    ascension = np.degrees(np.arctan2(np.cos(obliquity) * np.sin(longitude), np.cos(longitude)))
    sidereal = 280.46061837 + 360.98564736629 * (t * 36525) + 0.000387933 * t * t - 0.00478 * np.sin(node) * np.cos(obliquity)
    lead = np.radians(np.remainder(sidereal - ascension + 180 + 180, 360) - 180)
    return declination, lead, distance


def geometry(per_hour):
    declination, lead, distance = path()
    hour = (np.arange(24 * per_hour) + 0.5) / per_hour
    share = hour / 24
    d = declination[:365, None] + share * (declination[1:, None] - declination[:365, None])
    h = np.pi * (hour / 12 - 1) + lead[:365, None] + share * (lead[1:, None] - lead[:365, None])
    return np.sin(latitude) * np.sin(d) + np.cos(latitude) * np.cos(d) * np.cos(h), np.broadcast_to(distance[:365, None], h.shape)


def haurwitz(up):
    positive = np.maximum(up, 1e-9)
    return np.where(up > 0, 1098 * positive * np.exp(-0.059 / positive), 0)


def clear_days():
    up, _ = geometry(6)
    daily = haurwitz(up).sum(1) / 6
    return np.array([daily[MONTH == month].mean() for month in range(12)])


def power(clear, share):
    # A panel that lies flat gets all light of the horizontal, whatever its split.
    light = share * clear
    cell = air[MONTH][:, None] + 25 / 800 * light
    return np.minimum(MOST, EFFICIENCY * PEAK * light / 1000 * np.maximum(0, 1 - 0.004 * (cell - 25)))


def battery(sun, steps_per_hour):
    """Sun of days x steps (one year) or years x days x steps: all years step at once."""
    hours = 1 / steps_per_hour
    sun = sun.reshape(-1, 365, 24 * steps_per_hour)
    count = sun.shape[0]
    usable = np.interp(air, [-20, -10, 0, 10, 25], [0.7, 0.8, 0.9, 0.95, 1.0])
    stored = np.full(count, 0.9 * NEW)
    used, unmet, below = np.zeros(count), np.zeros(count), np.zeros((count, 12), dtype=bool)
    for day in range(365):
        month = MONTH[day]
        floor, most = NEW * (1 - usable[month]), 0.5 * NEW * IN * hours if air[month] >= 0 else 0.0
        for step in range(sun.shape[2]):
            given = sun[:, day, step]
            direct = np.minimum(LOAD, given)
            into = np.minimum(np.minimum((given - direct) * hours * IN, most), NEW - stored)
            asked = (LOAD - direct) * hours / OUT
            taken = np.minimum(asked, np.maximum(0, stored - floor))
            stored = stored + into - taken
            used += direct * hours + into / IN
            unmet += (asked - taken) * OUT
            below[:, month] |= (stored - floor) / (NEW - floor) < RESERVE - 1e-12
    return used, unmet, below


NODES = [(-0.8611363115940526, 0.3478548451374538), (-0.3399810435848563, 0.6521451548625461), (0.3399810435848563, 0.6521451548625461), (0.8611363115940526, 0.3478548451374538)]


def mean_days(mean):
    low, high, width = -500.0, 500.0, 0.93
    with np.errstate(over="ignore", divide="ignore"):
        for _ in range(100):
            rate = (low + high) / 2
            found = 0.07 + width / 2 if abs(rate) < 1e-6 else 0.07 + width / (1 - np.exp(-rate * width)) - 1 / rate
            low, high = (rate, high) if found < mean else (low, rate)
    rate = (low + high) / 2
    points = [(0.07 + np.log(1 + (1 + at) / 2 * (np.exp(rate * width) - 1)) / rate, weight / 2) for at, weight in NODES]
    total = sum(share * weight for share, weight in points)
    return [(min(1, share * mean / total), weight) for share, weight in points]


def minute_year():
    days = [mean_days(share) for share in sun_wh / clear_days()]
    up, _ = geometry(60)
    clear, sun = haurwitz(up), 0
    for node in range(4):
        share, weight = (np.array([days[month][node][part] for month in range(12)])[MONTH][:, None] for part in (0, 1))
        sun = sun + weight * power(clear, share)
    return battery(sun, 60)


def sampled():
    up, _ = geometry(1)
    clear = haurwitz(up)
    return battery(np.stack([power(clear, share[:, None]) for share in years]), 1)


def timed(run):
    begin = time.perf_counter()
    result = run()
    return (time.perf_counter() - begin) * 1000, result


year_ms, (used, unmet, _) = timed(minute_year)
sample_ms, (_, _, below) = timed(sampled)
print(json.dumps({"yearMs": year_ms, "sampleMs": sample_ms, "sunWh": float(used[0]), "unmetWh": float(unmet[0]), "chances": below.mean(0).tolist(), "numpy": np.__version__}))
