// Who closes a sheet goes on where it was opened from, on whichever page that is: at that link or that thing of a drawing, with it at the same height of the window.

const LOOK_MS = 50;
const MOST_LOOKS = 100;
const AFTER_TURN_MS = 150;
const SHEET = "#sheet-title";

let opener = null;

// Remembers what opens a sheet. What is opened from within a sheet closes to where the first was opened.
export function opensSheet(element) {
  if (element.closest(".side")?.querySelector(SHEET)) return;
  const id = element.dataset.id, view = element.closest("g.view")?.getAttribute("class");
  const href = element.getAttribute("href");
  const links = id ? [] : linksTo(href), at = links.indexOf(element);
  // A page that is come back to fills by and by: which of several links it was is known once there are as many again.
  const find = id
    ? () => [...document.querySelectorAll(`g.thing[data-id="${CSS.escape(id)}"]`)].find(thing => (thing.closest("g.view")?.getAttribute("class")) === view)
    : isLast => linksTo(href).length >= links.length || isLast ? linksTo(href)[at] : undefined;
  opener = { find, path: location.pathname, address: location.pathname + location.search, top: element.getBoundingClientRect().top, scrolled: window.scrollY };
}

function linksTo(href) {
  return [...document.querySelectorAll("main a[href]")].filter(link => link.getAttribute("href") === href);
}

function goBack(from, looks) {
  const isBack = location.pathname === from.path && !document.querySelector(SHEET) && (!from.isElsewhere || from.find(looks === 0));
  if (!isBack) {
    if (looks > 0) setTimeout(() => goBack(from, looks - 1), LOOK_MS);
    return;
  }
  // The page ends its own scrolling to the top first.
  setTimeout(() => {
    if (location.pathname !== from.path) return;
    const element = from.find(true);
    for (let around = element?.closest("details:not([open])"); around; around = around.parentElement.closest("details:not([open])")) around.open = true;
    window.scrollTo(0, from.scrolled);
    if (!element) return;
    element.focus({ preventScroll: true });
    // At the desk the side scrolls by itself, on a phone the page does.
    const side = element.closest(".side");
    if (side) side.scrollTop += element.getBoundingClientRect().top - from.top;
    window.scrollBy(0, element.getBoundingClientRect().top - from.top);
  }, AFTER_TURN_MS);
}

document.addEventListener("click", event => {
  const link = event.target.closest?.("a[href]");
  if (!link) return;
  if (link.matches(".close-sheet")) {
    if (opener) {
      opener.isElsewhere = opener.path !== location.pathname;
      if (opener.isElsewhere) link.setAttribute("href", opener.address);
      goBack(opener, MOST_LOOKS);
    }
    opener = null;
  } else if (/[?&]thing=/.test(link.getAttribute("href"))) {
    opensSheet(link);
  } else if (!link.closest(".skip")) {
    opener = null;
  }
}, true);
