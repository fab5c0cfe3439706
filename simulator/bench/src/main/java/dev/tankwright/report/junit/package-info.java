/**
 * Verdicts in the XML that build servers read. In come runs and the results of campaigns. Out go
 * documents in which no two cases have the same name.
 */
package dev.tankwright.report.junit;
