const SHORTEST = 0.05;
const allMarks = run.marks.concat(run.failures).sort((a, b) => a.at - b.at);

/** Shows a window of time in all panels, s. */
function show(min, max) {
  const span = Math.min(Math.max(max - min, SHORTEST), run.end);
  const from = Math.min(Math.max(min, 0), run.end - span);
  view.placing = true;
  panels.forEach((u) => u.setScale("x", { min: from, max: from + span }));
  queueMicrotask(placeCursor);
}

function showAll() {
  show(0, run.end);
}

/** Called by every panel whenever its scale changes. */
function onScale(u, key) {
  if (key === "x" && u === panels[0]) {
    view.min = u.scales.x.min;
    view.max = u.scales.x.max;
    queueMicrotask(tell);
    if (view.fit) {
      queueMicrotask(refit);
    }
  }
}

/** Called by every panel when the pointer moves its cursor; a new window alone moves no cursor. */
function onCursor(u) {
  if (u.cursor.left >= 0 && u.cursor.event && !view.placing) {
    view.moment = Math.min(Math.max(u.posToVal(u.cursor.left, "x"), 0), run.end);
    tell();
  }
}

/** Puts the cursor of all panels back on its moment, or out of sight. */
function placeCursor() {
  const { moment } = view;
  const inside = moment >= view.min && moment <= view.max;
  panels.forEach((u) => u.setCursor({ left: inside ? u.valToPos(moment, "x") : -10, top: 0 }, false));
  view.placing = false;
  tell();
}

/** Moves the cursor to a moment, and the window with it when it is outside. */
function go(moment) {
  view.moment = Math.min(Math.max(moment, 0), run.end);
  if (view.moment < view.min || view.moment > view.max) {
    const half = (view.max - view.min) / 2;
    show(view.moment - half, view.moment + half);
  } else {
    placeCursor();
  }
}

function zoom(factor) {
  const inside = view.moment >= view.min && view.moment <= view.max;
  const centre = inside ? view.moment : (view.min + view.max) / 2;
  show(centre - (centre - view.min) * factor, centre + (view.max - centre) * factor);
}

function shift(part) {
  const by = (view.max - view.min) * part;
  show(view.min + by, view.max + by);
}

function step(part) {
  go(view.moment + (view.max - view.min) * part);
}

/** Goes to the next mark in a direction, 1 or -1; marks closer than 1 ms count as one. */
function nextMark(direction) {
  const ahead = allMarks.filter((mark) => (mark.at - view.moment) * direction > 0.001);
  if (ahead.length > 0) {
    go((direction > 0 ? ahead[0] : ahead[ahead.length - 1]).at);
  }
}

function refit() {
  charts.forEach((chart) => chart.panel.setScale("y", { min: null, max: null }));
}

/** The line above the panels, and the values in the legends. */
function tell() {
  const decimals = decimalsFor(view.max - view.min);
  const near = (view.max - view.min) / 150;
  const marks = allMarks.filter((mark) => Math.abs(mark.at - view.moment) <= near);
  const readout = document.getElementById("readout");
  const text = marks.length === 0 ? "" : `${marks[0].kind}: ${marks[0].text}${marks.length > 1 ? `, and ${marks.length - 1} more here` : ""}`;
  readout.replaceChildren(
    make("strong", "", clockText(view.moment, Math.max(decimals, 1))),
    make("span", "mark", text),
    make("span", "window", `window ${clockText(view.min, decimals)} to ${clockText(view.max, decimals)} min:s`),
  );
  tellValues();
}

const keys = {
  ArrowLeft: (event) => step(event.shiftKey ? -0.05 : -0.005),
  ArrowRight: (event) => step(event.shiftKey ? 0.05 : 0.005),
  "+": () => zoom(0.5),
  "=": () => zoom(0.5),
  "-": () => zoom(2),
  PageUp: () => nextMark(-1),
  PageDown: () => nextMark(1),
  Home: () => go(0),
  End: () => go(run.end),
  0: showAll,
};

function onKey(event) {
  const act = keys[event.key];
  if (act && event.target === stack && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault();
    act(event);
    const phase = stayAt(run.phases, view.moment);
    document.getElementById("said").textContent = `${clockText(view.moment, 1)}, ${phase ? phase.name : ""}, solution ${charts[0].lines[2].output.textContent} degrees Celsius`;
  }
}

function onClick(event) {
  const button = event.target.closest(".go, .near");
  if (button) {
    const moment = Number(button.dataset.ms) / 1000;
    view.moment = moment;
    if (button.classList.contains("near")) {
      show(moment - 60, moment + 60);
    } else {
      go(moment);
    }
    document.getElementById("plots").scrollIntoView({ block: "start" });
  }
}

function wire() {
  const click = (id, act) => document.getElementById(id).addEventListener("click", act);
  click("whole", showAll);
  click("closer", () => zoom(0.5));
  click("wider", () => zoom(2));
  click("earlier", () => shift(-0.5));
  click("later", () => shift(0.5));
  click("previous", () => nextMark(-1));
  click("next", () => nextMark(1));
  document.getElementById("fit").addEventListener("change", (event) => {
    view.fit = event.target.checked;
    refit();
  });
  stack.addEventListener("keydown", onKey);
  document.addEventListener("click", onClick);
}

/** Draws everything anew, at a width in CSS px, in the colours that hold now. */
function redraw(width) {
  ink.forget();
  panels.forEach((u) => {
    u.setSize({ width, height: u.height });
    u.redraw(false, true);
  });
  queueMicrotask(placeCursor);
}

function watch() {
  let width = stack.clientWidth;
  new ResizeObserver(() => {
    if (stack.clientWidth !== width && stack.clientWidth > 0) {
      width = stack.clientWidth;
      redraw(width);
    }
  }).observe(stack);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => redraw(stack.clientWidth));
  let folded = [];
  addEventListener("beforeprint", () => {
    folded = document.querySelectorAll("details:not([open])");
    document.documentElement.classList.add("printing");
    folded.forEach((details) => details.setAttribute("open", ""));
    redraw(680);
  });
  addEventListener("afterprint", () => {
    document.documentElement.classList.remove("printing");
    folded.forEach((details) => details.removeAttribute("open"));
    redraw(stack.clientWidth);
  });
}

build();
wire();
watch();
// Once the panels have their scales: they take them in a task of their own.
view.moment = (run.failures[0] ?? run.marks.find((mark) => mark.kind === "fault") ?? { at: run.end }).at;
queueMicrotask(placeCursor);
