/** The correlations of the plant held against the values their sources publish. */
package dev.tankwright.bench.properties;
