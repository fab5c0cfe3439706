/**
 * The report of one run: its page with plots, its lines in a terminal, its folder of files. In
 * comes a finished run with what became of its events. Out go files; nothing is decided here.
 */
package dev.tankwright.report.run;
