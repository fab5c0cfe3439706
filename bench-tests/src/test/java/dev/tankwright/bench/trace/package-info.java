/** Joins what every module noted of its tests with the requirements of docs/safety.md. */
package dev.tankwright.bench.trace;
