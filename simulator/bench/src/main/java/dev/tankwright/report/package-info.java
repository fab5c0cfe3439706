/**
 * The pages of a folder of results, whatever it holds: each kind has a room below this one. In come
 * folders that a run or a campaign has left. Out go the same folders, their pages made anew.
 */
package dev.tankwright.report;
