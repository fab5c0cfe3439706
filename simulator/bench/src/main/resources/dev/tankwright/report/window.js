/** Shortest window, s. */
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
  panels.forEach((u) => {
    u.setCursor({ left: inside ? u.valToPos(moment, "x") : -10, top: 0 }, false);
  });
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
