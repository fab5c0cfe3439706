/*
 * The yardstick for the benchmarks: what a closed loop of this size costs when it is written as
 * plainly as C allows. A lumped bath of ten states moved on by 10 ms with explicit steps, inputs
 * that are debounced, nine phases, eight monitors with hold times. It is simpler than the bench's
 * bath and controller and proves nothing: its time per step is what ours is compared with.
 *
 *   gcc -O2 -Wall -Wextra -pedantic -std=c99 -o plain-loop plain_loop.c -lm && ./plain-loop
 *
 * Prints nanoseconds per step: the least and the median of nine rounds, for the logic alone and for
 * the closed loop.
 */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { ROUNDS = 9, STEPS = 5000000, DT_MS = 10, INPUTS = 8, MONITORS = 8 };

enum phase { SELF_TEST, STANDBY, HEATING, DEGASSING, CLEANING, PAUSED, COMPLETE, DRAINING, LOCKOUT };

struct bath {
  double liquid, wall, load, heater, lid, litres, gas, activity, sensor, second;
};

struct pins {
  int counts, second_counts;
  bool raw[INPUTS]; /* lid, lid break, minimum, fill mark, drain shut, current, running, mains */
};

struct logic {
  enum phase phase;
  int stable_ms[INPUTS];
  bool seen[INPUTS];
  int hold_ms[MONITORS];
  unsigned faults;
  int left_ms, tail_ms, pulse_ms, sweep_ms, setpoint;
  bool heat, sonicate, drain, relay;
  int hertz;
};

static const int LIMIT_MS[MONITORS] = {500, 100, 5000, 100, 500, 1000, 50, 300};

static void sense(struct logic *c, const struct pins *p) {
  for (int i = 0; i < INPUTS; i++) {
    if (p->raw[i] == c->seen[i]) {
      c->stable_ms[i] = 0;
    } else if ((c->stable_ms[i] += DT_MS) >= 50) {
      c->seen[i] = p->raw[i];
      c->stable_ms[i] = 0;
    }
  }
}

static void watch(struct logic *c, const struct pins *p, int milli_c, int second_milli_c) {
  bool condition[MONITORS] = {
      c->seen[0] == c->seen[1],
      second_milli_c >= 70000,
      abs(milli_c - second_milli_c) > 3000,
      p->counts <= 15 || p->counts >= 4080,
      c->seen[5] && !c->heat,
      c->heat && !c->seen[5] && c->seen[7],
      !c->seen[2] && (c->heat || c->sonicate),
      c->seen[6] != c->sonicate && c->seen[7]};
  for (int i = 0; i < MONITORS; i++) {
    c->hold_ms[i] = condition[i] ? c->hold_ms[i] + DT_MS : 0;
    if (c->hold_ms[i] > LIMIT_MS[i]) {
      c->faults |= 1u << i;
    }
  }
  if (c->faults != 0) {
    c->phase = LOCKOUT;
  }
}

static void decide(struct logic *c, int milli_c, int command) {
  bool lid = c->seen[0] && !c->seen[1];
  switch (c->phase) {
    case SELF_TEST:
      c->phase = c->seen[7] && c->seen[4] ? STANDBY : SELF_TEST;
      break;
    case STANDBY:
      if (command == 1 && lid && c->seen[2]) {
        c->phase = HEATING;
        c->setpoint = 40000;
        c->left_ms = 600000;
      } else if (command == 4) {
        c->phase = DRAINING;
        c->tail_ms = 60000;
      }
      break;
    case HEATING:
      c->phase = !lid ? PAUSED : milli_c >= c->setpoint - 300 ? DEGASSING : HEATING;
      break;
    case DEGASSING:
      c->left_ms -= DT_MS;
      c->phase = !lid ? PAUSED : c->left_ms <= 300000 ? CLEANING : DEGASSING;
      break;
    case CLEANING:
      c->left_ms -= c->sonicate ? DT_MS : 0;
      c->phase = !lid ? PAUSED : c->left_ms <= 0 ? COMPLETE : CLEANING;
      break;
    case PAUSED:
      c->phase = command == 2 && lid ? HEATING : PAUSED;
      break;
    case COMPLETE:
      c->phase = command == 3 ? STANDBY : COMPLETE;
      break;
    case DRAINING:
      c->tail_ms -= c->seen[2] ? 0 : DT_MS;
      c->phase = c->tail_ms <= 0 ? STANDBY : DRAINING;
      break;
    case LOCKOUT:
      break;
  }
}

static void drive(struct logic *c, int milli_c) {
  bool running = c->phase == HEATING || c->phase == DEGASSING || c->phase == CLEANING;
  bool allowed = c->faults == 0 && c->seen[2] && c->seen[4] && c->seen[7];
  c->relay = c->faults == 0;
  if (milli_c > c->setpoint + 300) {
    c->heat = false;
  } else if (milli_c < c->setpoint - 300) {
    c->heat = true;
  }
  c->heat = c->heat && running && allowed;
  c->pulse_ms = c->pulse_ms + DT_MS >= 10000 ? 0 : c->pulse_ms + DT_MS;
  c->sweep_ms = c->sweep_ms + DT_MS >= 1000 ? 0 : c->sweep_ms + DT_MS;
  bool pulse = c->phase == DEGASSING && c->pulse_ms < 6000;
  c->sonicate = (pulse || c->phase == CLEANING) && allowed && c->seen[0] && !c->seen[1];
  int from_end = c->sweep_ms < 500 ? c->sweep_ms : 1000 - c->sweep_ms;
  c->hertz = c->sonicate ? 39000 + 4 * from_end : 0;
  c->drain = c->phase == DRAINING && !c->heat && !c->sonicate;
}

static int milli_celsius(int counts) { return counts * 37 - 25000; }

static void scan(struct logic *c, const struct pins *p, int command) {
  int milli_c = milli_celsius(p->counts);
  int second = milli_celsius(p->second_counts);
  sense(c, p);
  decide(c, milli_c, command);
  watch(c, p, milli_c, second);
  drive(c, milli_c);
}

static void step(struct bath *b, const struct logic *c) {
  const double dt = DT_MS / 1000.0;
  double heating = c->heat && c->relay ? 300.0 : 0.0;
  double sound = c->sonicate ? 150.0 * (1.0 - 0.1 * fabs(c->hertz - 40000.0) / 1000.0) : 0.0;
  double mass = b->litres * 4180.0 + 1.0;
  double to_wall = 60.0 * (b->liquid - b->wall);
  double to_load = 20.0 * (b->liquid - b->load);
  double loss = 8.0 * (b->wall - 22.0);
  double vapour = 0.2 * (b->liquid - b->lid);
  double heat = 15.0 * (b->heater - b->liquid);
  b->heater += dt * (heating - heat) / 200.0;
  b->liquid += dt * (heat + 0.9 * sound - to_wall - to_load - vapour) / mass;
  b->wall += dt * (to_wall - loss) / 900.0;
  b->load += dt * to_load / 450.0;
  b->lid += dt * (vapour - 0.8 * (b->lid - 22.0)) / 300.0;
  b->gas += dt * ((1.0 - b->gas) / 3600.0 - 0.002 * sound / 150.0 * b->gas);
  b->activity += dt * (sound / 150.0 * (1.0 - 0.6 * b->gas) - b->activity) / 0.3;
  b->litres -= c->drain && b->litres > 0.05 ? dt * 0.05 * b->litres : 0.0;
  b->sensor += dt * (b->liquid - b->sensor) / 5.0;
  b->second += dt * (b->wall - b->second) / 6.0;
}

static void read_pins(const struct bath *b, const struct logic *c, struct pins *p) {
  p->counts = (int)((b->sensor + 25.0) * 1000.0 / 37.0);
  p->second_counts = (int)((b->second + 25.0) * 1000.0 / 37.0);
  p->raw[0] = true;
  p->raw[1] = false;
  p->raw[2] = b->litres > 2.0;
  p->raw[3] = b->litres > 5.5;
  p->raw[4] = !c->drain;
  p->raw[5] = c->heat && c->relay;
  p->raw[6] = c->sonicate;
  p->raw[7] = true;
}

static double now_ns(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec * 1e9 + t.tv_nsec;
}

static int ascending(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

static volatile double sink;

static double round_ns(bool closed) {
  struct bath b = {22, 22, 22, 22, 22, 6, 1, 0, 22, 22};
  struct logic c = {0};
  struct pins p;
  read_pins(&b, &c, &p);
  double from = now_ns();
  for (int i = 0; i < STEPS; i++) {
    int command = c.phase == STANDBY ? 1 : c.phase == COMPLETE ? 3 : 0;
    if (closed) {
      read_pins(&b, &c, &p);
    } else {
      p.counts = 1755 + (i >> 8 & 15);
      p.second_counts = p.counts;
      p.raw[5] = c.heat;
      p.raw[6] = c.sonicate;
    }
    scan(&c, &p, command);
    if (closed) {
      step(&b, &c);
    }
  }
  double ns = (now_ns() - from) / STEPS;
  if (c.phase == LOCKOUT) {
    fprintf(stderr, "the loop ended in lockout, faults %u: it measured something else\n", c.faults);
    exit(1);
  }
  sink = b.liquid + c.hertz + c.left_ms + c.faults;
  return ns;
}

static void measure(const char *name, bool closed) {
  double ns[ROUNDS];
  round_ns(closed);
  for (int i = 0; i < ROUNDS; i++) {
    ns[i] = round_ns(closed);
  }
  qsort(ns, ROUNDS, sizeof ns[0], ascending);
  printf("%-12s least %6.1f ns, median %6.1f ns a step\n", name, ns[0], ns[ROUNDS / 2]);
}

int main(void) {
  measure("logic", false);
  measure("closed loop", true);
  return 0;
}
