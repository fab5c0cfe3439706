const stack = document.getElementById("stack");
const panels = [];

/** The window of all panels, s. */
const view = { min: 0, max: run.end, moment: 0, fit: false, placing: false };

/** Steps of the time axis, s. */
const TIME_STEPS = [
  0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200,
  14400,
];

function isNarrow() {
  return stack.clientWidth < 640;
}

function gutter() {
  return isNarrow() ? 40 : 104;
}

/** Font of the axes; uPlot itself scales it to the screen. */
function axisFont() {
  return `12px ${ink.of("face")}`;
}

/** The time axis; every panel has its grid, the first and the last have its numbers too. */
function timeAxis(side, labelled) {
  return {
    side,
    size: labelled ? 26 : 6,
    gap: 4,
    space: 70,
    incrs: TIME_STEPS,
    font: axisFont(),
    stroke: () => ink.of("muted"),
    grid: { stroke: () => ink.of("grid"), width: 1 },
    ticks: { show: false },
    values: (u, splits) => {
      const decimals = decimalsFor(u.scales.x.max - u.scales.x.min);
      return splits.map((split) => (labelled ? clockText(split, decimals) : ""));
    },
  };
}

function valueAxis(shown) {
  return {
    size: () => gutter(),
    gap: 6,
    space: 32,
    font: axisFont(),
    stroke: () => ink.of("muted"),
    grid: { show: shown, stroke: () => ink.of("grid"), width: 1 },
    ticks: { show: false },
    values: (u, splits) => splits.map((split) => (shown ? String(Math.round(split * 1000) / 1000) : "")),
  };
}

/** The window that is asked for; all samples together are the whole run, which may be longer. */
function timeRange(u, min, max) {
  const all = run.t.length === 0 || (min <= run.t[0] && max >= run.t[run.t.length - 1]);
  return all ? [0, run.end] : [min, max];
}

/** Options that all panels share. */
function options(height, axes, series, yRange, hooks) {
  return {
    width: stack.clientWidth,
    height,
    padding: [4, 22, 0, 0],
    legend: { show: false },
    scales: { x: { time: false, range: timeRange }, y: { range: yRange } },
    axes,
    series: [{}, ...series],
    cursor: {
      y: false,
      drag: { x: true, y: false, dist: 5 },
      sync: { key: "run" },
      bind: { mouseleave: () => null },
      points: hooks.points === false ? { show: false } : { size: 7, width: 2, fill: () => ink.of("surface") },
    },
    hooks: {
      drawAxes: [drawMarks],
      draw: hooks.draw ? [hooks.draw] : [],
      setScale: [onScale],
      setCursor: [onCursor],
    },
  };
}

/**
 * Lowest and highest value of a chart with some air, over the run or over the window. A line that is
 * led by the others has no say: a broken sensor reads anything, and would press all else flat.
 */
function rangeOf(chart, u) {
  let low = Infinity;
  let high = -Infinity;
  chart.lines.forEach((line, i) => {
    if (u.series[i + 1].show && !line.led && !(view.fit && line.colour === "limit")) {
      for (let k = 0; k < run.t.length; k++) {
        const value = line.values[k];
        const seen = !view.fit || (run.t[k] >= view.min && run.t[k] <= view.max);
        if (value !== null && seen) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
    }
  });
  if (low > high) {
    return [0, 1];
  }
  const air = Math.max((high - low) * 0.08, 0.02);
  const floor = !view.fit && chart.floor !== undefined ? chart.floor : low - air;
  return [floor, high + air];
}

/** A band panel: no lines of its own, all of it drawn. */
function bandPanel(place, height, axis, draw) {
  const nothing = run.t.map(() => null);
  const series = [{ points: { show: false } }];
  const made = options(height, [axis, valueAxis(false)], series, () => [0, 1], { draw, points: false });
  panels.push(new uPlot(made, [run.t, nothing], place));
}

function chartPanel(place, chart) {
  const series = chart.lines.map((line) => ({
    label: line.name,
    stroke: () => ink.of(line.colour),
    width: line.width,
    dash: line.dash,
    paths: line.step ? uPlot.paths.stepped({ align: 1 }) : undefined,
    points: { show: false },
  }));
  const range = (u) => rangeOf(chart, u);
  const made = options(chart.height, [timeAxis(2, false), valueAxis(true)], series, range, {});
  chart.panel = new uPlot(made, [run.t, ...chart.lines.map((line) => line.values)], place);
  panels.push(chart.panel);
}
