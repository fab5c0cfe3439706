/** The curves as the page carries them. */
const bath = JSON.parse(document.getElementById("bath-data").textContent);

/** Times of a curve's samples in a unit of that many seconds. */
function times(curve, unit) {
  return curve.v.map((_, i) => (i * curve.step) / unit);
}

/** The longer of two sets of times on one grid. */
function longer(one, other) {
  return one.length > other.length ? one : other;
}

function line(label, colour, dash) {
  return {
    label,
    dash,
    width: 2,
    points: { show: false },
    stroke: () => ink.of(colour),
    value: (u, celsius) => (celsius == null ? "" : `${celsius.toFixed(1)} °C`),
  };
}

function axis(label, size) {
  return {
    label,
    size,
    stroke: () => ink.of("ink"),
    grid: { stroke: () => ink.of("grid") },
    ticks: { stroke: () => ink.of("rule") },
  };
}

/** A plot of temperatures that keeps to the width of its place. */
function plot(id, unit, lines, data) {
  const place = document.getElementById(id);
  const options = {
    width: Math.max(300, place.clientWidth),
    height: 300,
    scales: { x: { time: false } },
    axes: [axis(`Time, ${unit}`, 50), axis("Temperature, °C", 60)],
    series: [{ label: "Time", value: (u, t) => (t == null ? "" : `${t.toFixed(1)} ${unit}`) }, ...lines],
  };
  const drawn = new uPlot(options, data, place);
  new ResizeObserver(() => {
    const width = Math.max(300, place.clientWidth);
    if (width !== drawn.width) {
      drawn.setSize({ width, height: 300 });
    }
  }).observe(place);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    ink.forget();
    drawn.redraw(false, true);
  });
}

const minutes = longer(times(bath.on, 60), times(bath.off, 60));
plot(
  "heating-plot",
  "min",
  [line("Solution, lid on", "liquid"), line("Solution, lid off", "measured", [8, 4])],
  [minutes, bath.on.v, bath.off.v].map((values) =>
    minutes.map((_, i) => (i < values.length ? values[i] : null)),
  ),
);

const seconds = times(bath.dry, 1);
plot(
  "dry-plot",
  "s",
  [line("Heated wall", "wall"), line("Limiter", "open", [8, 4]), line("Fuse", "limit", [3, 3])],
  [seconds, bath.dry.v, seconds.map(() => bath.limiter), seconds.map(() => bath.fuse)],
);
