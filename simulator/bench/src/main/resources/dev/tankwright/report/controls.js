/** The line above the panels, and the values in the legends. */
function tell() {
  const decimals = decimalsFor(view.max - view.min);
  const near = (view.max - view.min) / 150;
  const marks = allMarks.filter((mark) => Math.abs(mark.at - view.moment) <= near);
  const readout = document.getElementById("readout");
  const more = marks.length > 1 ? `, and ${marks.length - 1} more here` : "";
  const text = marks.length === 0 ? "" : `${marks[0].kind}: ${marks[0].text}${more}`;
  const range = `${clockText(view.min, decimals)} to ${clockText(view.max, decimals)}`;
  readout.replaceChildren(
    make("strong", "", clockText(view.moment, Math.max(decimals, 1))),
    make("span", "mark", text),
    make("span", "window", `window ${range} min:s`),
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
    say();
  }
}

/** Where the cursor stands, for a screen reader. */
function say() {
  const warmth = charts[0].lines.find((line) => line.colour === "liquid").output.textContent;
  const place = `${clockText(view.moment, 1)}, ${view.phaseWord.textContent}`;
  document.getElementById("said").textContent = `${place}, solution ${warmth} degrees Celsius`;
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
  const dark = matchMedia("(prefers-color-scheme: dark)");
  dark.addEventListener("change", () => redraw(stack.clientWidth));
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
const first = run.failures[0] ?? run.marks.find((mark) => mark.kind === "fault");
view.moment = first ? first.at : run.end;
queueMicrotask(placeCursor);
