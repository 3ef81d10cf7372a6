"""The hull engine's method in NumPy, vectorised over triangles: clip at the water, sum tetrahedra from a point in it (divergence theorem),
sum the cut along its edge (Green), Newton on the energy with exact second derivatives.

Arguments: file of corners, file of triangles, mass kg, LCG, KG, water kg/m3, repeats. Prints one JSON object."""
import json, sys, time
import numpy as np

corners = np.fromfile(sys.argv[1], dtype=np.float64).reshape(-1, 3)
triangles = np.fromfile(sys.argv[2], dtype=np.int32).reshape(-1, 3)
mass, lcg, kg, water = map(float, sys.argv[3:7])
repeats = int(sys.argv[7])
gravity = np.array([lcg, 0.0, kg])
low, high = corners.min(0), corners.max(0)
centre, size = (low + high) / 2, high - low


def tetrahedra(a, b, c):
    det = np.einsum("ij,ij->i", a, np.cross(b, c))
    return det.sum() / 6, det @ (a + b + c) / 24


def rolled(rows, first):
    return np.take_along_axis(rows, (first[:, None] + np.arange(3)) % 3, 1)


def state(d, t, h):
    st, ct, sh, ch = np.sin(t), np.cos(t), np.sin(h), np.cos(h)
    up, along, across, outward = np.array([st, ct * sh, ct * ch]), np.array([ct, -st * sh, -st * ch]), np.array([0, ch, -sh]), np.array([0, sh, ch])
    heights = corners @ up - d
    foot = centre - (centre @ up - d) * up
    places = corners - foot
    wet = heights[triangles] < 0
    count = wet.sum(1)
    volume, moment = tetrahedra(*places[triangles[count == 3]].transpose(1, 0, 2))
    one = rolled(triangles[count == 1], wet[count == 1].argmax(1))
    two = rolled(triangles[count == 2], (wet[count == 2].argmin(1) + 1) % 3)

    def crossing(inside, beyond):
        share = heights[inside] / (heights[inside] - heights[beyond])
        return places[inside] + share[:, None] * (places[beyond] - places[inside])

    next_, last = crossing(one[:, 0], one[:, 1]), crossing(one[:, 0], one[:, 2])
    on_second, on_first = crossing(two[:, 1], two[:, 2]), crossing(two[:, 0], two[:, 2])
    first, second = places[two[:, 0]], places[two[:, 1]]
    for part in (tetrahedra(places[one[:, 0]], next_, last), tetrahedra(first, second, on_second), tetrahedra(first, on_second, on_first)):
        volume, moment = volume + part[0], moment + part[1]
    moment = moment + volume * foot
    start, end = np.concatenate([last, on_first]), np.concatenate([next_, on_second])
    x1, y1, x2, y2 = start @ along, start @ across, end @ along, end @ across
    cross = x1 * y2 - x2 * y1
    area, fx, fy = cross.sum() / 2, cross @ (x1 + x2) / 6, cross @ (y1 + y2) / 6
    xx, yy = cross @ (x1 * x1 + x1 * x2 + x2 * x2) / 12, cross @ (y1 * y1 + y1 * y2 + y2 * y2) / 12
    xy = cross @ (x1 * y2 + 2 * x1 * y1 + 2 * x2 * y2 + x2 * y1) / 24
    ox, oy = along @ foot, across @ foot
    mx, my = fx + area * ox, fy + area * oy
    xx, yy, xy = xx + 2 * ox * fx + area * ox * ox, yy + 2 * oy * fy + area * oy * oy, xy + ox * fy + oy * fx + area * ox * oy
    turning = mass * gravity - water * moment
    gradient = np.array([water * volume - mass, along @ turning, ct * (across @ turning)])
    hessian = np.array([
        [water * area, -water * mx, -ct * water * my],
        [-water * mx, water * xx - up @ turning, ct * water * xy - st * (across @ turning)],
        [-ct * water * my, ct * water * xy - st * (across @ turning), ct * ct * water * yy - ct * (outward @ turning)]])
    return gradient, hessian, ct


def rest(position, free):
    scale = mass * np.array([1, size[0], size[1]])
    for _ in range(100):
        gradient, hessian, ct = state(*position)
        if np.abs(gradient[:free] / scale[:free]).max() <= 1e-11:
            break
        step = np.linalg.solve(hessian[:free, :free], gradient[:free])
        position[:free] -= step / max(1, abs(step[0]) / (0.25 * size[2]), *np.abs(step[1:]) / 0.15)
    return position, gradient, hessian, ct


def curve():
    position, levers = np.array([low[2] + 0.4 * size[2], 0.0, 0.0]), []
    for degree in range(91):
        position[2] = np.radians(degree)
        position, gradient, hessian, ct = rest(position, 2)
        levers.append(gradient[2] / (ct * mass))
        ahead = np.linalg.solve(hessian[:2, :2], hessian[:2, 2]) * np.radians(1)
        position[:2] -= ahead
    return levers


def mean(run, times):
    begin = time.process_time()
    for _ in range(times):
        result = run()
    return (time.process_time() - begin) * 1000 / times, result


rest(np.array([low[2] + 0.4 * size[2], 0.0, 0.0]), 3)
equilibrium_ms, found = mean(lambda: rest(np.array([low[2] + 0.4 * size[2], 0.0, 0.0]), 3), 3 * repeats)
curve_ms, levers = mean(curve, repeats)
print(json.dumps({"equilibriumMs": equilibrium_ms, "curveMs": curve_ms, "draughtM": found[0][0], "trimDeg": float(np.degrees(found[0][1])), "leversM": levers, "numpy": np.__version__}))
