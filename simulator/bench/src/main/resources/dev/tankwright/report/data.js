"use strict";

/** The run as the page carries it, decoded. Times in seconds since the start of the run. */
const run = (() => {
  const raw = JSON.parse(document.getElementById("run-data").textContent);
  let clock = 0;
  const t = raw.t.map((step) => (clock += step) / 1000);
  const end = Math.max(raw.end / 1000, 0.05);

  /** Values of a line, one per time; null where there is no number. */
  function line(key) {
    let sum = 0;
    const { scale, v } = raw.lines[key];
    return v.map((step) => (step === null ? null : (sum += step) / scale));
  }

  /** Stays at one value, in the order of time: from, to, value. */
  function stays(key) {
    const { scale, v } = raw.steps[key];
    const found = [];
    for (let i = 0; i < v.length; i += 2) {
      const to = i + 2 < v.length ? t[v[i + 2]] : end;
      found.push({ from: t[v[i]], to, value: v[i + 1] / scale });
    }
    return found;
  }

  /** A stepped signal as a line: one value per time. */
  function stepped(key) {
    const { scale, v } = raw.steps[key];
    const values = new Array(t.length);
    for (let i = 0; i < v.length; i += 2) {
      values.fill(v[i + 1] / scale, v[i], i + 2 < v.length ? v[i + 2] : t.length);
    }
    return values;
  }

  const marks = raw.marks.map(([ms, kind, text]) => ({ at: ms / 1000, kind, text }));
  const failures = raw.failures.map(([ms, text]) => ({ at: ms / 1000, kind: "failed", text }));
  const phases = raw.phases.map(([key, name, ms, lasted]) => ({
    key,
    name,
    from: ms / 1000,
    to: (ms + lasted) / 1000,
  }));
  const { limit, faults } = raw;
  return { t, end, limit, faults, line, stays, stepped, marks, failures, phases };
})();

/** Index of the last element that starts at or before the moment, -1 before all of them. */
function lastAt(list, moment, start) {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (start(list[middle]) <= moment) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low - 1;
}

/** Value of a line between its samples; a step keeps the value of the last sample. */
function valueAt(values, moment, isStep) {
  const i = lastAt(run.t, moment, (time) => time);
  if (i < 0) {
    return null;
  }
  const before = values[i];
  const after = values[i + 1];
  if (isStep || before === null || after === null || after === undefined) {
    return before;
  }
  return before + ((after - before) * (moment - run.t[i])) / (run.t[i + 1] - run.t[i]);
}

/** The stay that holds at the moment, or undefined. */
function stayAt(stays, moment) {
  return stays[lastAt(stays, moment, (stay) => stay.from)];
}

/** A moment as min:s, with decimals of a second. */
function clockText(moment, decimals) {
  const unit = 10 ** decimals;
  const whole = Math.round(moment * unit);
  const minutes = Math.floor(whole / unit / 60);
  const seconds = (whole - minutes * 60 * unit) / unit;
  return `${minutes}:${seconds < 10 ? "0" : ""}${seconds.toFixed(decimals)}`;
}

/** Decimals of a second that tell moments apart in a window this long, in s. */
function decimalsFor(span) {
  return span > 120 ? 0 : span > 12 ? 1 : span > 1.2 ? 2 : 3;
}
