// What the browser must do itself on a drawing: measuring its room, keys, dragging, and keeping the place when it is drawn larger. What lies under a finger: finger.js.
import { opensSheet } from "/opener.js";
import { heldByFinger, thingAt, thingsUnder } from "/finger.js";

const LEAST_DRAG_PX = 4;
const LEAST_FINGER_DRAG_PX = 10;
const BORDERS_PX = 2;
const ZOOM_KEYS = { "+": 1, "=": 1, "-": -1, "0": 0 };

// A click opens a thing, a drag moves it. A finger scrolls the page, unless it is put on the chosen thing: that it drags. Distances go to the server in metres of the view that was dragged in.
export function listenToDrawing(frame, host, page, canDrag, hasWater) {
  if (!host) return; // The page was left while this was fetched.
  let drag = null;
  const water = hasWater ? movingWater(frame, host, page) : null;

  const open = thing => {
    opensSheet(thing);
    page.invokeMethodAsync("Open", thing.dataset.id);
  };
  // Where a finger covers several things, the page asks which is meant.
  let under = [];
  const tap = (x, y) => {
    under = thingsUnder(host, x, y);
    if (under.length === 1) open(under[0]);
    else if (under.length > 1) page.invokeMethodAsync("Ask", under.map(thing => ({ id: thing.dataset.id, name: thing.getAttribute("aria-label") ?? thing.dataset.id })));
  };

  host.addEventListener("keydown", event => {
    const thing = thingAt(event.target);
    if (event.key in ZOOM_KEYS && !(event.ctrlKey || event.metaKey || event.altKey)) {
      event.preventDefault();
      host.refocus = thing ? { id: thing.dataset.id, view: viewOf(thing) } : null;
      page.invokeMethodAsync("Zoom", ZOOM_KEYS[event.key]);
    } else if (thing && (event.key === "Enter" || event.key === " ")) {
      event.preventDefault();
      open(thing);
    }
  });

  // A finger's click comes after all else of its touch. A list that were asked for before it could come in time to stand under it, and take it for an answer.
  let tapped = null;
  host.addEventListener("click", () => {
    if (tapped) tap(tapped.x, tapped.y);
    tapped = null;
  });

  frame.addEventListener("click", event => {
    const chosen = event.target.closest?.(".which [data-opens]");
    const thing = under.find(one => one.dataset.id === chosen?.dataset.opens);
    if (thing) opensSheet(thing);
  }, true);

  const held = (x, y) => canDrag ? heldByFinger(host, x, y) : null;
  // The browser takes a finger for scrolling before it is moved.
  host.addEventListener("touchstart", event => {
    if (event.touches.length === 1 && held(event.touches[0].clientX, event.touches[0].clientY)) event.preventDefault();
  }, { passive: false });

  host.addEventListener("pointerdown", event => {
    const isFinger = event.pointerType === "touch";
    tapped = null;
    if (event.button !== 0 || !event.isPrimary) return;
    const thing = isFinger ? held(event.clientX, event.clientY) : thingAt(event.target);
    if (!thing && !isFinger) return;
    const svg = thing?.ownerSVGElement, scale = svg ? svg.viewBox.baseVal.width / svg.getBoundingClientRect().width : 1;
    drag = { thing, view: thing?.closest("g.view"), scale, x: event.clientX, y: event.clientY, isFinger, moved: false, pointer: event.pointerId };
  });

  host.addEventListener("pointermove", event => {
    if (!drag || event.pointerId !== drag.pointer) return;
    const dx = event.clientX - drag.x, dy = event.clientY - drag.y;
    if (!drag.moved && Math.hypot(dx, dy) < (drag.isFinger ? LEAST_FINGER_DRAG_PX : LEAST_DRAG_PX)) return;
    if (!drag.thing) drag = null;
    if (!canDrag || !drag) return;
    if (!drag.moved) host.setPointerCapture(event.pointerId);
    drag.moved = true;
    drag.thing.classList.add("dragged");
    for (const one of withName(drag.thing)) one.setAttribute("transform", `translate(${dx * drag.scale} ${dy * drag.scale})`);
    water?.follow(drag.thing.dataset.id, drag.view, dx * drag.scale, dy * drag.scale);
  });

  const finish = event => {
    if (!drag || event.pointerId !== drag.pointer) return;
    const { thing, view, scale, isFinger, moved } = drag;
    const dx = (event.clientX - drag.x) * scale, dy = (event.clientY - drag.y) * scale;
    drag = null;
    thing?.classList.remove("dragged");
    for (const one of thing ? withName(thing) : []) one.removeAttribute("transform");
    water?.stop();
    if (event.type === "pointercancel") {
      if (thing) water?.letGo(thing.dataset.id, view);
      return;
    }
    if (!moved) {
      if (!isFinger) open(thing);
      else if (thing) tap(event.clientX, event.clientY); // Held: no click follows.
      else tapped = { x: event.clientX, y: event.clientY };
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
    showChosen(host);
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

// The thing and, in its own view, the name that goes with it, with the line that leads to it.
function withName(thing) {
  return [thing, ...(thing.closest("g.view")?.querySelectorAll(`[data-names="${CSS.escape(thing.dataset.id)}"]`) ?? [])];
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
  if (host.chosenId !== chosenId) showChosen(host);
  host.chosenId = chosenId;
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

// A sheet that opens beside the drawing narrows it: what was chosen stays in what is seen of it.
function showChosen(host) {
  const chosen = host.querySelector("g.thing.selected")?.getBoundingClientRect(), seen = host.getBoundingClientRect();
  if (chosen && (chosen.right > seen.right || chosen.left < seen.left)) host.scrollLeft += (chosen.left + chosen.right - seen.left - seen.right) / 2;
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
