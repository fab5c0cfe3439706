/**
 * The scan: {@link dev.tankwright.controller.CleanerController} runs sense, decide, guard and drive
 * once every 10 ms and is the whole controller. No I/O, no clock, no thread, no floating point, and
 * no allocation once it is made.
 */
package dev.tankwright.controller;
