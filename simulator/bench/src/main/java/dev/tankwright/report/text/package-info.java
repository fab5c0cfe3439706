/**
 * How values, outcomes and names are said to people, and how lines stand in a terminal. In come
 * numbers, constants and summaries of campaigns. Out goes text without markup, the same in every
 * locale.
 */
package dev.tankwright.report.text;
