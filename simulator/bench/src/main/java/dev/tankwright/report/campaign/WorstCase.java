package dev.tankwright.report.campaign;

import dev.tankwright.campaign.CaseResult;
import dev.tankwright.campaign.CellSummary;
import dev.tankwright.scenario.run.RunResult;

/**
 * The worst case of a cell, run again with a trace.
 *
 * @param cell its cell
 * @param result what it came to in the campaign
 * @param run the run of its scenario file
 * @param scenario the text of that file
 * @param report where its whole report stands, below the campaign's folder
 */
record WorstCase(
    CellSummary cell, CaseResult result, RunResult run, String scenario, String report) {}
