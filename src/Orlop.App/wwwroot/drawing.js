// What the browser must do itself on a drawing: measuring its room, keys, dragging, and keeping the place when it is drawn larger.

const LEAST_DRAG_PX = 4;
const BORDERS_PX = 2;
const ZOOM_KEYS = { "+": 1, "=": 1, "-": -1, "0": 0 };
const THING = "g.thing[data-id]";

// A click opens a thing, a drag moves it. Distances go to the server in metres of the view that was dragged in.
export function listenToDrawing(frame, host, page, canDrag, hasWater) {
  if (!host) return; // The page was left while this was fetched.
  let drag = null;
  const water = hasWater ? movingWater(frame, host, page) : null;

  const open = thing => page.invokeMethodAsync("Open", thing.dataset.id);
  const thingAt = event => event.target.closest?.(THING) ?? namedBy(event.target.closest?.("text[data-names]"));

  host.addEventListener("keydown", event => {
    const thing = thingAt(event);
    if (event.key in ZOOM_KEYS && !(event.ctrlKey || event.metaKey || event.altKey)) {
      event.preventDefault();
      host.refocus = thing ? { id: thing.dataset.id, view: viewOf(thing) } : null;
      page.invokeMethodAsync("Zoom", ZOOM_KEYS[event.key]);
    } else if (thing && (event.key === "Enter" || event.key === " ")) {
      event.preventDefault();
      open(thing);
    }
  });

  host.addEventListener("pointerdown", event => {
    const thing = thingAt(event);
    if (!thing || event.button !== 0) return;
    const svg = thing.ownerSVGElement;
    const scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
    drag = { thing, view: thing.closest("g.view"), scale, x: event.clientX, y: event.clientY, moved: false, pointer: event.pointerId };
  });

  host.addEventListener("pointermove", event => {
    if (!canDrag || !drag || event.pointerId !== drag.pointer) return;
    const dx = event.clientX - drag.x, dy = event.clientY - drag.y;
    if (!drag.moved && Math.hypot(dx, dy) < LEAST_DRAG_PX) return;
    if (!drag.moved) host.setPointerCapture(event.pointerId);
    drag.moved = true;
    drag.thing.classList.add("dragged");
    drag.thing.setAttribute("transform", `translate(${dx * drag.scale} ${dy * drag.scale})`);
    water?.follow(drag.thing.dataset.id, drag.view, dx * drag.scale, dy * drag.scale);
  });

  const finish = event => {
    if (!drag || event.pointerId !== drag.pointer) return;
    const { thing, view, scale, moved } = drag;
    const dx = (event.clientX - drag.x) * scale, dy = (event.clientY - drag.y) * scale;
    drag = null;
    thing.classList.remove("dragged");
    thing.removeAttribute("transform");
    water?.stop();
    if (event.type === "pointercancel") {
      water?.letGo(thing.dataset.id, view);
      return;
    }
    if (!moved) {
      open(thing);
      return;
    }
    const perM = Number(view?.dataset.pxPerM);
    if (perM > 0) page.invokeMethodAsync("Move", thing.dataset.id, viewOf(thing), dx / perM, -dy / perM).finally(() => water?.back());
  };
  host.addEventListener("pointerup", finish);
  host.addEventListener("pointercancel", finish);

  // A drawing that was just put in at another size scrolls by itself: that is not where somebody looked.
  host.addEventListener("scroll", () => {
    if (host.querySelector("svg")?.getAttribute("width") === host.drawnWidth) rememberMiddle(host);
  });

  let width = 0;
  new ResizeObserver(() => {
    if (frame.clientWidth === 0 || Math.abs(frame.clientWidth - width) < 2) return;
    width = frame.clientWidth;
    page.invokeMethodAsync("TakeRoom", width - BORDERS_PX).catch(() => { /* The page was left. */ });
  }).observe(frame);
}

// Water or curves move with the hand: one question at a time to the server, always with the latest place. It answers with the water, or draws the curves anew itself.
function movingWater(frame, host, page) {
  const words = frame.querySelector(".hand-words");
  let asked = null, isAsking = false, kept = null;

  const ask = async () => {
    isAsking = true;
    while (asked) {
      const { id, view, acrossM, upM } = asked;
      asked = null;
      const held = await page.invokeMethodAsync("Hold", id, view, acrossM, upM).catch(() => null);
      if (kept && held) show(held);
    }
    isAsking = false;
  };

  const show = ({ water, words: said }) => {
    for (const { group } of kept) drawWater(group, water);
    words.textContent = said;
    words.hidden = false;
  };

  return {
    follow(id, view, dx, dy) {
      const perM = Number(view?.dataset.pxPerM);
      if (!(perM > 0)) return;
      kept ??= [...host.querySelectorAll("g.afloat")].map(group => ({ group, was: group.innerHTML }));
      asked = { id, view: nameOf(view), acrossM: dx / perM, upM: -dy / perM };
      if (!isAsking) ask();
    },
    stop() {
      asked = null;
    },
    // Nothing was moved: the server draws what it had.
    letGo(id, view) {
      page.invokeMethodAsync("Hold", id, nameOf(view), 0, 0).catch(() => { /* The page was left. */ });
      this.back();
    },
    // What the server has drawn anew since is no longer in the page, and keeps its new water.
    back() {
      for (const { group, was } of kept ?? []) group.innerHTML = was;
      kept = asked = null;
      words.hidden = true;
    },
  };
}

// In profile the water's height is read at the frame's two sides; in a section at its cut, port on the left.
function drawWater(group, water) {
  const view = group.closest("g.view"), number = name => Number(group.dataset[name]);
  const [left, right, top, bottom, cut] = ["left", "right", "top", "bottom", "cutM"].map(number);
  const [originX, originY, perM] = ["xOrigin", "upOrigin", "pxPerM"].map(name => Number(view.dataset[name]));
  const isSection = view.classList.contains("section");
  const y = x => {
    const acrossM = (x - originX) / perM;
    const heightM = water.heightM + (isSection ? water.riseForwardRatio * cut - water.risePortRatio * acrossM : water.riseForwardRatio * acrossM);
    return Math.min(bottom, Math.max(top, originY - heightM * perM));
  };
  const [from, to] = [y(left), y(right)];
  group.querySelector(".water")?.setAttribute("d", `M${left},${from}L${right},${to}L${right},${bottom}L${left},${bottom}Z`);
  const line = group.querySelector(".water-line");
  for (const [name, value] of Object.entries({ x1: left, y1: from, x2: right, y2: to })) line?.setAttribute(name, value);
}

// The thing that a label names, in the label's own view.
function namedBy(label) {
  return label?.closest("g.view").querySelector(`g.thing[data-id="${CSS.escape(label.dataset.names)}"]`);
}

function viewOf(thing) {
  return nameOf(thing.closest("g.view"));
}

function nameOf(view) {
  return ["profile", "plan", "section"].find(name => view?.classList.contains(name)) ?? null;
}

// Marks the chosen thing; where the drawing has changed its size, keeps the middle of what is seen, and brings back what had the focus.
export function drawn(host, chosenId) {
  if (!host) return;
  for (const thing of host.querySelectorAll("g.thing.selected")) thing.classList.remove("selected");
  const chosen = chosenId ? [...host.querySelectorAll(`g.thing[data-id="${CSS.escape(chosenId)}"]`)] : [];
  for (const thing of chosen) thing.classList.add("selected");

  const svg = host.querySelector("svg");
  if (!svg || host.classList.contains("unmeasured")) return;
  const width = svg.getAttribute("width");
  if (host.drawnWidth !== undefined && host.drawnWidth !== width) keepPlace(host);
  host.drawnWidth = width;
  rememberMiddle(host);
  if (host.refocus !== undefined) {
    const { id, view } = host.refocus ?? {};
    const again = id ? [...host.querySelectorAll(`g.thing[data-id="${CSS.escape(id)}"]`)].find(thing => viewOf(thing) === view) : host;
    if (document.activeElement === document.body) again?.focus({ preventScroll: true });
    host.refocus = undefined;
  }
}

function rememberMiddle(host) {
  host.middle = {
    x: (host.scrollLeft + host.clientWidth / 2) / host.scrollWidth,
    y: (host.scrollTop + host.clientHeight / 2) / host.scrollHeight,
  };
}

function keepPlace(host) {
  host.scrollLeft = host.middle.x * host.scrollWidth - host.clientWidth / 2;
  host.scrollTop = host.middle.y * host.scrollHeight - host.clientHeight / 2;
}
