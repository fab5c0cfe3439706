/**
 * The controller's state transition table in forms that other programs read. In comes the table as
 * it stands in the controller. Out go diagrams and State Chart XML.
 */
package dev.tankwright.report.statechart;
