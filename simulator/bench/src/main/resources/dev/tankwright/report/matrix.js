"use strict";

/** Arrow keys move among the cells of the matrix; only one of them is a stop of the tab key. */
const rows = [...document.querySelectorAll("#heat tbody tr")].map((row) =>
  [...row.querySelectorAll("td")].map((cell) => cell.querySelector("a")),
);
const steps = { ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [-1, 0], ArrowDown: [1, 0] };

function place(link) {
  const row = rows.findIndex((links) => links.includes(link));
  return [row, rows[row].indexOf(link)];
}

/** Makes a cell the one that the tab key stops at. */
function stopAt(link) {
  rows.flat().forEach((other) => other?.setAttribute("tabindex", other === link ? "0" : "-1"));
}

function onArrow(event) {
  const link = event.target.closest("a");
  const step = steps[event.key];
  if (!link || !step || event.ctrlKey || event.metaKey || event.altKey) {
    return;
  }
  let [row, column] = place(link);
  do {
    row += step[0];
    column += step[1];
  } while (rows[row]?.[column] === null);
  const next = rows[row]?.[column];
  if (next) {
    event.preventDefault();
    stopAt(next);
    next.focus();
  }
}

/** The chosen account gets the focus, so that reading goes on there. */
function onChoice() {
  const chosen = location.hash.length > 1 ? document.getElementById(location.hash.slice(1)) : null;
  if (chosen?.matches(".cell, .worst")) {
    chosen.querySelector(":scope > details")?.setAttribute("open", "");
    chosen.focus({ preventScroll: true });
  }
}

const first = rows.flat().find((link) => link !== null);
if (first) {
  stopAt(first);
  document.getElementById("heat").addEventListener("keydown", onArrow);
  document.getElementById("heat").addEventListener("focusin", (event) => {
    if (event.target.closest("a")) {
      stopAt(event.target.closest("a"));
    }
  });
}
let folded = [];
addEventListener("beforeprint", () => {
  folded = document.querySelectorAll(".worst > details:not([open])");
  folded.forEach((details) => details.setAttribute("open", ""));
});
addEventListener("afterprint", () => folded.forEach((details) => details.removeAttribute("open")));
addEventListener("hashchange", onChoice);
onChoice();
