/**
 * How much of the tests runs: long evidence only where it is asked for, and what needs a program of
 * the machine only where it is installed. What is left out is counted, and told at the end of the
 * build. Tests of every module use it: it leaves this module in its test jar.
 */
package dev.tankwright.extent;
