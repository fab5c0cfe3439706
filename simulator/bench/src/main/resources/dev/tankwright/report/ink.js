/** Colours of the style sheet, for what is drawn on canvas. */
const ink = {
  cache: new Map(),

  /** A colour by its name in the style sheet. */
  of(name) {
    if (!this.cache.has(name)) {
      const style = getComputedStyle(document.documentElement);
      this.cache.set(name, style.getPropertyValue(`--${name}`).trim());
    }
    return this.cache.get(name);
  },

  /** To be called when light turns to dark, or the page is printed. */
  forget() {
    this.cache.clear();
  },
};

/** How the kinds of marks are drawn: dash in CSS px, width in CSS px, colour by name. */
const markStyle = {
  action: { dash: [], width: 1, colour: "action" },
  event: { dash: [1, 4], width: 1, colour: "event" },
  fault: { dash: [7, 4], width: 1.5, colour: "fault" },
  failed: { dash: [14, 3, 2, 3], width: 1.5, colour: "failed" },
};

/** Font on canvas, in CSS px. */
function canvasFont(size, weight = "") {
  return `${weight} ${size * devicePixelRatio}px ${ink.of("face")}`.trim();
}

/** Vertical lines of all marks within the window, behind the lines of a panel. */
function drawMarks(u) {
  const { ctx } = u;
  const { left, top, width, height } = u.bbox;
  ctx.save();
  ctx.beginPath();
  ctx.rect(left, top, width, height);
  ctx.clip();
  for (const mark of run.marks.concat(run.failures)) {
    if (mark.at < u.scales.x.min || mark.at > u.scales.x.max) {
      continue;
    }
    const style = markStyle[mark.kind];
    const x = Math.round(u.valToPos(mark.at, "x", true)) + 0.5;
    ctx.strokeStyle = ink.of(style.colour);
    ctx.globalAlpha = mark.kind === "event" ? 0.6 : 0.75;
    ctx.lineWidth = style.width * devicePixelRatio;
    ctx.setLineDash(style.dash.map((part) => part * devicePixelRatio));
    ctx.beginPath();
    ctx.moveTo(x, top);
    ctx.lineTo(x, top + height);
    ctx.stroke();
  }
  ctx.restore();
}

/** The sign of one kind of mark, around a centre; sizes in device px. */
function drawSign(ctx, kind, x, y, size) {
  const half = size / 2;
  ctx.beginPath();
  if (kind === "action") {
    ctx.moveTo(x, y - half);
    ctx.lineTo(x + half, y + half * 0.8);
    ctx.lineTo(x - half, y + half * 0.8);
  } else if (kind === "fault") {
    ctx.moveTo(x, y - half * 1.2);
    ctx.lineTo(x + half * 1.2, y);
    ctx.lineTo(x, y + half * 1.2);
    ctx.lineTo(x - half * 1.2, y);
  } else if (kind === "event") {
    ctx.arc(x, y, half * 0.7, 0, 2 * Math.PI);
  } else {
    octagon(ctx, x, y, half * 1.15);
  }
  ctx.closePath();
  ctx.fillStyle = kind === "event" ? ink.of("surface") : ink.of(markStyle[kind].colour);
  ctx.strokeStyle = kind === "event" ? ink.of("event") : ink.of("surface");
  ctx.lineWidth = devicePixelRatio * 1.5;
  ctx.stroke();
  ctx.fill();
  if (kind === "failed") {
    cross(ctx, x, y, half * 0.5);
  }
}

function octagon(ctx, x, y, radius) {
  for (let corner = 0; corner < 8; corner++) {
    const angle = ((corner + 0.5) * Math.PI) / 4;
    ctx.lineTo(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
  }
}

function cross(ctx, x, y, arm) {
  ctx.strokeStyle = ink.of("surface");
  ctx.lineWidth = devicePixelRatio * 1.6;
  ctx.beginPath();
  ctx.moveTo(x - arm, y - arm);
  ctx.lineTo(x + arm, y + arm);
  ctx.moveTo(x + arm, y - arm);
  ctx.lineTo(x - arm, y + arm);
  ctx.stroke();
}
