/** The state chart that leaves the program, as another program would read it. */
package dev.tankwright.bench.scxml;
