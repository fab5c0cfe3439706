/**
 * The report of a campaign: page with matrix and traces, tables as comma-separated values, the
 * worst cases run again. In come a campaign's results and its plan. Out go the files of its folder.
 */
package dev.tankwright.report.campaign;
