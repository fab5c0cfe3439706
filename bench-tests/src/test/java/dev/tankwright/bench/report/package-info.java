/** The report as a browser shows it. */
package dev.tankwright.bench.report;
