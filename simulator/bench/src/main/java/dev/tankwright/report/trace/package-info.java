/**
 * Sampled signals as files for other programs: comma-separated values and value change dumps. In
 * come the traces of runs. Out go bytes, the same for the same trace.
 */
package dev.tankwright.report.trace;
