/** An element with a class and a text. */
function make(tag, name, text = "") {
  const element = document.createElement(tag);
  element.className = name;
  element.textContent = text;
  return element;
}

/** A panel's place with its heading: title, unit, and room for the legend. */
function figure(title, unit) {
  const place = make("figure", "panel");
  const head = make("figcaption", "legend");
  const name = make("h3", "", title);
  if (unit) {
    name.append(make("span", "unit", unit));
  }
  head.append(name);
  place.append(head);
  stack.append(place);
  return { place, head };
}

/** A short sample of a line, as it is drawn. */
function sample(line) {
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
  svg.setAttribute("viewBox", "0 0 28 8");
  svg.setAttribute("class", `sample ink-${line.colour}`);
  svg.setAttribute("aria-hidden", "true");
  path.setAttribute("d", "M0 4H28");
  path.setAttribute("stroke-width", line.width);
  path.setAttribute("stroke-dasharray", (line.dash ?? []).join(" "));
  svg.append(path);
  return svg;
}

/** A button per line: shows its value at the cursor, and hides it or shows it again. */
function lineKey(chart, line, i) {
  const key = make("button", "key");
  key.type = "button";
  key.setAttribute("aria-pressed", "true");
  key.title = "Hide or show this line";
  line.output = make("span", "value");
  key.append(sample(line), make("span", "", line.name), line.output);
  key.addEventListener("click", () => {
    const shown = key.getAttribute("aria-pressed") !== "true";
    key.setAttribute("aria-pressed", String(shown));
    chart.panel.setSeries(i + 1, { show: shown });
  });
  return key;
}

/** All panels, from the phases down to the lanes. */
function build() {
  const strip = figure("Phase", "");
  strip.place.classList.add("strip");
  strip.word = strip.head.appendChild(make("span", "value"));
  view.phaseWord = strip.word;
  bandPanel(strip.place, 104, timeAxis(0, true), drawPhases);
  addChart(charts[0]);
  const bands = figure("Actuators and states", "");
  lanes.forEach((lane) => {
    const key = make("span", "key");
    lane.output = make("span", "value");
    key.append(make("span", "", lane.name), lane.output);
    bands.head.append(key);
  });
  bandPanel(bands.place, lanes.length * (isNarrow() ? 38 : 25) + 30, timeAxis(2, true), drawLanes);
  bands.place.classList.add("bands");
  charts.slice(1).forEach(addChart);
}

function addChart(chart) {
  const { place, head } = figure(chart.title, chart.unit);
  chart.lines
    .map((line, i) => [line, i])
    .reverse()
    .forEach(([line, i]) => head.append(lineKey(chart, line, i)));
  chartPanel(place, chart);
}

/** Values of everything at the cursor. */
function tellValues() {
  for (const chart of charts) {
    for (const line of chart.lines) {
      const value = valueAt(line.values, view.moment, line.step);
      line.output.textContent = value === null ? "–" : value.toFixed(chart.decimals).replace("-", "−");
    }
  }
  for (const lane of lanes) {
    lane.output.textContent = laneWord(lane, view.moment);
  }
  const phase = stayAt(run.phases, view.moment);
  const ended = phase !== undefined && view.moment > phase.to;
  view.phaseWord.textContent = ended ? "no supply" : (phase?.name ?? "");
}
