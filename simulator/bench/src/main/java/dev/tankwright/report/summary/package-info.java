/**
 * The summary for the design history file, and the list of checksums of what it speaks of. In come
 * results whose files stand in their folder. Out go the page, the list, and lines for a terminal.
 */
package dev.tankwright.report.summary;
