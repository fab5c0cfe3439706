/** Tells at the end of a build what it has left out. */
package dev.tankwright.bench.extent;
