/** Actuators and states that are drawn as bands, one lane each. */
const lanes = [
  { key: "heater", name: "Heater", colour: "lane-heat" },
  { key: "cut-off-relay", name: "Cut-off relay", colour: "lane-heat" },
  { key: "ultrasound", name: "Ultrasound", colour: "lane-sound", level: run.stays("drive-level") },
  { key: "drain-valve", name: "Drain valve", colour: "lane-water", on: "open", off: "closed" },
  { key: "lid-open", name: "Lid open", colour: "lane-state", on: "yes", off: "no" },
  { key: "level-low", name: "Level low", colour: "lane-state", on: "yes", off: "no" },
  { key: "degas-owed", name: "Degassing required", colour: "lane-state", on: "yes", off: "no" },
  { key: "limiter-tripped", name: "Limiter tripped", colour: "failed", on: "yes", off: "no" },
  { key: "fault", name: "Fault", colour: "failed", words: run.faults },
].map((lane) => ({ on: "on", off: "off", ...lane, stays: run.stays(lane.key) }));

/** What a lane is at the moment, in words. */
function laneWord(lane, moment) {
  const stay = stayAt(lane.stays, moment);
  if (stay === undefined) {
    return "";
  }
  if (lane.words) {
    return stay.value === 0 ? "none" : lane.words[stay.value];
  }
  if (lane.level && stay.value !== 0) {
    return `${Math.round((stayAt(lane.level, moment)?.value ?? 0) * 100)} %`;
  }
  return stay.value === 0 ? lane.off : lane.on;
}

/** Calls back with the left and the right edge of each stay within the window, in device px. */
function eachInWindow(u, stays, draw) {
  const { min, max } = u.scales.x;
  for (let i = Math.max(0, lastAt(stays, min, (stay) => stay.from)); i < stays.length; i++) {
    const stay = stays[i];
    if (stay.from > max) {
      return;
    }
    if (stay.to >= min) {
      const left = u.valToPos(Math.max(stay.from, min), "x", true);
      const right = u.valToPos(Math.min(stay.to, max), "x", true);
      draw(stay, left, Math.max(right, left + 1));
    }
  }
}

/** All lanes of the panel, with their names in the gutter or, where that is narrow, above them. */
function drawLanes(u) {
  const { ctx } = u;
  const { left, top, width, height } = u.bbox;
  const pitch = height / lanes.length;
  const inside = isNarrow();
  ctx.save();
  ctx.textBaseline = "middle";
  lanes.forEach((lane, i) => {
    const base = top + (i + 1) * pitch - 2 * devicePixelRatio;
    const tall = pitch - (inside ? 21 : 8) * devicePixelRatio;
    ctx.font = canvasFont(12);
    ctx.fillStyle = ink.of("muted");
    ctx.textAlign = inside ? "left" : "right";
    const y = inside ? base - tall - 8 * devicePixelRatio : base - tall / 2;
    ctx.fillText(lane.name, inside ? left + 3 * devicePixelRatio : left - 8 * devicePixelRatio, y);
    ctx.fillStyle = ink.of("rule");
    ctx.fillRect(left, Math.round(base), width, devicePixelRatio);
    drawLane(u, lane, base, tall);
  });
  ctx.restore();
}

function drawLane(u, lane, base, tall) {
  const { ctx } = u;
  ctx.fillStyle = ink.of(lane.colour);
  eachInWindow(u, lane.stays, (stay, from, to) => {
    if (stay.value === 0) {
      return;
    }
    if (lane.level) {
      drawLevels(u, lane, stay, base, tall);
    } else {
      ctx.fillRect(from, base - tall, to - from, tall);
    }
    if (lane.words) {
      label(ctx, lane.words[stay.value], from, to, base - tall / 2, "surface");
      ctx.fillStyle = ink.of(lane.colour);
    }
  });
}

/** The drive level while the ultrasound is on, as the height of its band. */
function drawLevels(u, lane, on, base, tall) {
  eachInWindow(u, lane.level, (stay) => {
    const from = Math.max(stay.from, on.from, u.scales.x.min);
    const to = Math.min(stay.to, on.to, u.scales.x.max);
    if (to > from) {
      const left = u.valToPos(from, "x", true);
      const right = Math.max(u.valToPos(to, "x", true), left + 1);
      const high = Math.max(tall * Math.min(stay.value, 1), 2 * devicePixelRatio);
      u.ctx.fillRect(left, base - high, right - left, high);
    }
  });
}

/** A word in the middle of a band, where it has room. */
function label(ctx, word, from, to, y, colour) {
  ctx.font = canvasFont(12, "600");
  if (ctx.measureText(word).width + 10 * devicePixelRatio <= to - from) {
    ctx.textAlign = "center";
    ctx.textBaseline = "middle";
    ctx.fillStyle = ink.of(colour);
    ctx.fillText(word, (from + to) / 2, y);
  }
}

/** Which signs share a row under the phases, so that marks of one moment do not hide each other. */
const SIGN_ROWS = [["action"], ["event"], ["fault", "failed"]];

/** The phases as one coloured strip with their names, and the signs of the marks under it. */
function drawPhases(u) {
  const { ctx } = u;
  const { top, height } = u.bbox;
  const tall = 26 * devicePixelRatio;
  ctx.save();
  eachInWindow(u, run.phases, (phase, from, to) => {
    ctx.fillStyle = ink.of(`phase-${phase.key}`);
    ctx.fillRect(from, top, to - from, tall);
    if (to - from > 3 * devicePixelRatio) {
      ctx.fillStyle = ink.of("surface");
      ctx.fillRect(to - devicePixelRatio, top, devicePixelRatio, tall);
    }
    label(ctx, phase.name, from, to, top + tall / 2, "phase-ink");
  });
  const row = (height - tall) / SIGN_ROWS.length;
  for (const mark of run.marks.concat(run.failures)) {
    if (mark.at >= u.scales.x.min && mark.at <= u.scales.x.max) {
      const y = top + tall + (SIGN_ROWS.findIndex((kinds) => kinds.includes(mark.kind)) + 0.5) * row;
      drawSign(ctx, mark.kind, u.valToPos(mark.at, "x", true), y, 11 * devicePixelRatio);
    }
  }
  ctx.restore();
}
