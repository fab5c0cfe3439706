/** Panels of lines: title, unit, height in CSS px, and the lines of each. */
const charts = [
  {
    title: "Temperature",
    unit: "°C",
    height: 250,
    decimals: 1,
    lines: [
      { name: "Wall", colour: "wall", width: 1, values: run.line("wall-temperature") },
      {
        name: "Measured",
        colour: "measured",
        led: true,
        width: 1.5,
        dash: [6, 3],
        values: run.line("measured-temperature"),
      },
      { name: "Solution", colour: "liquid", width: 2.25, values: run.line("liquid-temperature") },
      {
        name: "Setpoint",
        colour: "setpoint",
        width: 1.5,
        dash: [3, 3],
        step: true,
        values: run.stepped("setpoint").map((value) => value || null),
      },
      {
        name: "Cut-off limit",
        colour: "limit",
        width: 1.5,
        dash: [12, 4],
        step: true,
        values: run.t.map(() => run.limit),
      },
    ],
  },
  {
    title: "Activity index",
    unit: "0 to 1",
    height: 110,
    decimals: 2,
    floor: 0,
    lines: [{ name: "Activity", colour: "activity", width: 1.75, values: run.line("activity") }],
  },
  {
    title: "Dissolved gas",
    unit: "% of saturation",
    height: 110,
    decimals: 1,
    floor: 0,
    lines: [
      {
        name: "Gas",
        colour: "gas",
        width: 1.75,
        values: run.line("dissolved-gas").map((value) => (value === null ? null : value * 100)),
      },
    ],
  },
  {
    title: "Volume",
    unit: "L",
    height: 110,
    decimals: 2,
    floor: 0,
    lines: [{ name: "Volume", colour: "volume", width: 1.75, values: run.line("volume") }],
  },
];
