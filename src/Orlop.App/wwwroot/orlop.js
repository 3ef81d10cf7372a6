// What the browser must do itself: keys, and remembering the units and what was chosen in this window. Drawings: drawing.js; where a sheet was opened from: opener.js.
import "/opener.js";

export function rememberUnits(units) {
  document.cookie = `units=${units}; path=/; max-age=31536000; samesite=strict`;
}

// What was chosen in this window outlives the program, and ends with the window.
export function rememberChoice(name, id) {
  if (id) sessionStorage.setItem(`orlop-${name}`, id);
  else sessionStorage.removeItem(`orlop-${name}`);
}

export function rememberedChoice(name) {
  return sessionStorage.getItem(`orlop-${name}`);
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

// A list or a record that is gone to opens, and its first box takes the focus.
export function goToField(id) {
  const field = document.getElementById(id);
  for (let around = field?.closest("details"); around; around = around.parentElement.closest("details")) around.open = true;
  const isGroup = field?.matches("details, fieldset");
  const box = isGroup ? [...field.querySelectorAll("input, select, textarea")].find(one => one.checkVisibility()) ?? field : field;
  box?.scrollIntoView({ block: "center" });
  box?.focus({ preventScroll: true });
}

// The title of what was just opened takes the focus, unless somebody is at a field or a button of it already: a page is slower than a hand, and a key pressed on a
// button that loses the focus is lost.
export function takeFocus(title) {
  const hasGoneOn = title?.closest(".side, .chain-side")?.contains(document.activeElement) && document.activeElement.matches("input, select, textarea, button, summary");
  if (!hasGoneOn) title?.focus({ preventScroll: true });
}

// Where the sheet, the chain or the alteration stands below what was chosen, as on a phone, it comes into view with the focus; at the desk it is in view already.
// It waits until the page has ended its own scrolling to the top. The head of a sheet stays at the top of the window as one scrolls through the sheet: where the
// sheet itself begins is what counts. Who has gone on meanwhile, to a field or a button, is not pulled back.
const AFTER_TURN_MS = 150;
function bringIntoView(title) {
  if (title?.id === "sheet-title" || title?.id === "chain-title") setTimeout(() => {
    if (document.activeElement !== title) return;
    const begins = (title.id === "sheet-title" && title.closest(".side")) || title;
    begins.scrollTop = 0;
    const { top } = begins.getBoundingClientRect();
    if (top < 0 || Math.max(top, title.getBoundingClientRect().bottom) > window.innerHeight / 2) begins.scrollIntoView({ block: "start" });
  }, AFTER_TURN_MS);
}
document.addEventListener("focusin", event => bringIntoView(event.target));
// A page that was opened at a thing has given it the focus before this was loaded.
bringIntoView(document.activeElement);

// The next open step comes to the top when the page has ended its own scrolling there; an address that names a place in the page goes to that.
export function goToStep(id) {
  if (!location.hash) setTimeout(() => document.getElementById(id)?.scrollIntoView({ block: "start" }), AFTER_TURN_MS);
}

export function copyText(id) {
  const box = document.getElementById(id);
  box?.select();
  return box ? navigator.clipboard.writeText(box.value).then(() => true, () => false) : false;
}

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
