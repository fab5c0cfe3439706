/**
 * What follows from a bath's profile, on a page and in a terminal. In come a profile and its
 * derived figures. Out go a table, a page with plots, and its file.
 */
package dev.tankwright.report.profile;
