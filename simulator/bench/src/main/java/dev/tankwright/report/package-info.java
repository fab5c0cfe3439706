/** What people and build servers look at after a run. Writes; decides nothing. */
package dev.tankwright.report;
