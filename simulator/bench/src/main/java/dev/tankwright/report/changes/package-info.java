/**
 * What has changed between two releases' results. In come two folders of results of the same kind.
 * Out go a comparison line by line, its page, and lines for a terminal.
 */
package dev.tankwright.report.changes;
