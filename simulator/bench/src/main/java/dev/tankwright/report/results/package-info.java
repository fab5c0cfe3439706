/**
 * What a folder of results tells, for whoever shows or compares it: runs with their verdicts, or a
 * campaign, each written as a document and read back. In come finished runs and folders. Out go
 * judged lines and counts, without markup.
 */
package dev.tankwright.report.results;
