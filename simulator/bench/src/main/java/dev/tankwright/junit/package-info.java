/**
 * A folder of scenarios as tests of JUnit 5. JUnit is no part of the command: who uses this package
 * brings it along.
 */
package dev.tankwright.junit;
