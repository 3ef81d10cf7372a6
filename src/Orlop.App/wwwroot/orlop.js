// What the browser must do itself: keys, dragging on the drawing, and remembering the units.

export function rememberUnits(units) {
  document.cookie = `units=${units}; path=/; max-age=31536000; samesite=strict`;
}

export function listenForUndo(header) {
  document.addEventListener("keydown", event => {
    const isTyping = event.target.closest?.("input, textarea, select, [contenteditable]");
    if (isTyping || event.altKey || !(event.ctrlKey || event.metaKey)) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) {
      event.preventDefault();
      header.invokeMethodAsync("Undo");
    } else if ((key === "z" && event.shiftKey) || key === "y") {
      event.preventDefault();
      header.invokeMethodAsync("Redo");
    }
  });
}

const LEAST_DRAG_PX = 4;

// Drawing: a click opens a thing, a drag moves it. Distances go to the server in metres of the view that was dragged in.
export function listenToDrawing(host, page, canDrag) {
  let drag = null;

  const open = thing => page.invokeMethodAsync("Open", thing.dataset.id);
  const thingAt = event => event.target.closest?.("g.thing[data-id]");

  host.addEventListener("keydown", event => {
    const thing = thingAt(event);
    if (!thing) return;
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      open(thing);
    }
  });

  host.addEventListener("pointerdown", event => {
    const thing = thingAt(event);
    const view = thing?.closest("g.view");
    if (!thing || event.button !== 0) return;
    const svg = thing.ownerSVGElement;
    const scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
    drag = { thing, view, scale, x: event.clientX, y: event.clientY, moved: false, pointer: event.pointerId };
  });

  host.addEventListener("pointermove", event => {
    if (!canDrag || !drag || event.pointerId !== drag.pointer) return;
    const dx = event.clientX - drag.x, dy = event.clientY - drag.y;
    if (!drag.moved && Math.hypot(dx, dy) < LEAST_DRAG_PX) return;
    if (!drag.moved) host.setPointerCapture(event.pointerId);
    drag.moved = true;
    drag.thing.classList.add("dragged");
    drag.thing.setAttribute("transform", `translate(${dx * drag.scale} ${dy * drag.scale})`);
  });

  const finish = event => {
    if (!drag || event.pointerId !== drag.pointer) return;
    const { thing, view, scale, moved } = drag;
    const dx = (event.clientX - drag.x) * scale, dy = (event.clientY - drag.y) * scale;
    drag = null;
    thing.classList.remove("dragged");
    thing.removeAttribute("transform");
    if (event.type === "pointercancel") return;
    if (!moved) {
      open(thing);
      return;
    }
    const perM = Number(view?.dataset.pxPerM);
    const kind = ["profile", "plan", "section"].find(name => view?.classList.contains(name));
    if (perM > 0 && kind) page.invokeMethodAsync("Move", thing.dataset.id, kind, dx / perM, -dy / perM);
  };
  host.addEventListener("pointerup", finish);
  host.addEventListener("pointercancel", finish);
}

// Marks the chosen thing in a drawing without drawing it again.
export function markChosen(host, id) {
  for (const thing of host.querySelectorAll("g.thing.selected")) thing.classList.remove("selected");
  if (id) for (const thing of host.querySelectorAll(`g.thing[data-id="${CSS.escape(id)}"]`)) thing.classList.add("selected");
}

export function goToField(id) {
  const field = document.getElementById(id);
  field?.scrollIntoView({ block: "center" });
  field?.focus({ preventScroll: true });
}

// Where the sheet or the chain stands below what was chosen, as on a phone, it comes into view with the focus; at the desk it is in view already.
// It waits until the page has ended its own scrolling to the top.
const AFTER_TURN_MS = 150;
document.addEventListener("focusin", event => {
  const title = event.target;
  if (title.id === "sheet-title" || title.id === "chain-title") setTimeout(() => {
    const { top, bottom } = title.getBoundingClientRect();
    if (top < 0 || bottom > window.innerHeight) title.scrollIntoView({ block: "start" });
  }, AFTER_TURN_MS);
});

export function printPage() {
  window.print();
}

// A skip link moves the focus only; the router would take its address for another page.
document.addEventListener("click", event => {
  const skip = event.target.closest?.("a.skip");
  if (!skip) return;
  event.preventDefault();
  event.stopPropagation();
  document.getElementById(skip.hash.slice(1))?.focus();
}, true);
