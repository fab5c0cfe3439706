/** What the library of scenarios covers, computed from running it. */
package dev.tankwright.bench.coverage;
