// What lies under a pointer on a drawing, and under a finger, which covers more than a point.

const FINGER_PX = 44;
const ROUND = 8;
const MOST_ASKED = 8;
const THING = "g.thing[data-id]";

// The thing that an element belongs to, or that a label names, in the label's own view.
export function thingAt(element) {
  return element?.closest?.(THING) ?? namedBy(element?.closest?.("text[data-names]"));
}

function namedBy(label) {
  return label?.closest("g.view").querySelector(`g.thing[data-id="${CSS.escape(label.dataset.names)}"]`);
}

// Places under a finger: its middle, and two rings around it.
function places(x, y) {
  const rings = [FINGER_PX / 4, FINGER_PX / 2].flatMap(far => [...Array(ROUND).keys()].map(turn => ({ far, x: x + far * Math.cos(2 * Math.PI * turn / ROUND), y: y + far * Math.sin(2 * Math.PI * turn / ROUND) })));
  return [{ far: 0, x, y }, ...rings];
}

// Each thing under a finger once, with how far from its middle it is met first, and at how many places.
function met(host, x, y) {
  const found = new Map();
  for (const place of places(x, y)) {
    const here = new Set(document.elementsFromPoint(place.x, place.y).filter(element => host.contains(element)).map(thingAt).filter(thing => thing));
    for (const thing of here) {
      const { far, count } = found.get(thing) ?? { far: place.far, count: 0 };
      found.set(thing, { far, count: count + 1 });
    }
  }
  return found;
}

// What is smaller than a finger and has its middle under it may lie between those places: how far off it is; null for any other.
function smallUnder(thing, x, y) {
  const { left, top, width, height } = thing.getBoundingClientRect();
  const far = Math.hypot(left + width / 2 - x, top + height / 2 - y), size = Math.max(width, height);
  return size > 0 && size < FINGER_PX && far <= FINGER_PX / 2 ? far : null;
}

// The things that a finger may mean, the nearest first, no more than a short list of them. One that lies under the whole finger is ground where something smaller was hit.
export function thingsUnder(host, x, y) {
  const hit = met(host, x, y);
  for (const thing of host.querySelectorAll(THING)) {
    const far = smallUnder(thing, x, y);
    if (far !== null) hit.set(thing, { far: Math.min(far, hit.get(thing)?.far ?? far), count: 0 });
  }
  const found = [...hit].map(([thing, { far, count }]) => ({ thing, far, isGround: count === 1 + 2 * ROUND }));
  const small = found.filter(one => !one.isGround).sort((one, other) => one.far - other.far);
  const meant = small.some(one => one.far === 0) ? small : [...small, ...found.filter(one => one.isGround)];
  const ids = meant.map(one => one.thing.dataset.id);
  return meant.filter((one, index) => ids.indexOf(one.thing.dataset.id) === index).slice(0, MOST_ASKED).map(one => one.thing);
}

// What a finger drags where it is put: the chosen thing, or a point of what is chosen.
export function heldByFinger(host, x, y) {
  return [...met(host, x, y)].filter(([thing]) => thing.matches(".selected, :has(> .point)")).sort(([, one], [, other]) => one.far - other.far)[0]?.[0] ?? null;
}
