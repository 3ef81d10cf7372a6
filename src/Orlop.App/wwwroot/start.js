// Starts the page, and brings it back when the program was stopped and is there again. What the page says meanwhile stands in Shell/App.razor.

const RETRY_MS = 2000;

// A program that was started again knows nothing of this page: it loads itself anew, but not before there is something to load.
async function loadAgain() {
  const isBack = await fetch(location.href, { cache: "no-store" }).then(() => true, () => false);
  if (isBack) location.reload();
  else setTimeout(loadAgain, RETRY_MS);
}

document.getElementById("components-reconnect-modal").addEventListener("components-reconnect-state-changed", event => {
  if (["rejected", "failed", "resume-failed"].includes(event.detail.state)) loadAgain();
});

Blazor.start({ circuit: { reconnectionOptions: { maxRetries: Number.MAX_SAFE_INTEGER, retryIntervalMilliseconds: () => RETRY_MS } } });
