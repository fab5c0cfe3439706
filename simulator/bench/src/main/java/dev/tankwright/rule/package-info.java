/**
 * What must hold in every scan, whatever stands on the pins. Seen from outside: pins, outputs,
 * panel and notices, never the inside of the controller.
 */
package dev.tankwright.rule;
