/**
 * The trace from safety requirement to executed test. Tests of every module use it: it leaves this
 * module as its test jar.
 */
package dev.tankwright.trace;
