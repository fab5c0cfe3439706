/** Raw counts and contacts become measurements with validity. */
package dev.tankwright.controller.sensing;
